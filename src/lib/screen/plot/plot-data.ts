/** Strokes that tell lines apart without color, in the manner of the line types of ISO 128-2. */
type Stroke = 'solid' | 'dashed' | 'dotted';

interface PlotPoint {
	/** Seconds. */
	x: number;
	/** In the unit of the axis. */
	y: number;
}

/** One line of a plot; cut into pieces where it has a corner that no curve may round off. */
interface PlotSeries {
	label: string;
	stroke: Stroke;
	pieces: PlotPoint[][];
}

/** A value that the lines are held against, drawn across the whole plot. */
export interface PlotLevel {
	label: string;
	value: number;
	stroke: Stroke;
}

/** A stretch of time, drawn above the plot like a dimension of a drawing. */
export interface PlotSpan {
	label: string;
	fromS: number;
	toS: number;
}

/** What a plot shows, as rows to read. */
export interface PlotTable {
	head: string[];
	rows: string[][];
}

export interface TimePlotData {
	series: PlotSeries[];
	levels: PlotLevel[];
	spans: PlotSpan[];
	/** End of the time axis. */
	untilS: number;
	/** Unit of the other axis, as written beside it. */
	unit: string;
	/** The other axis reaches at least to here, so that plots beside each other can share it. */
	reach?: number;
	/** Whether the other axis begins at zero; amounts do, temperatures need not. */
	isFromZero: boolean;
	/** What the plot says, in one sentence. */
	summary: string;
	table: PlotTable;
}
