/** Whether this Excel knows a level of the ExcelApi, such as "1.18". */
export type Supports = (level: string) => boolean;

export const excelSupports: Supports = (level) => Office.context.requirements.isSetSupported("ExcelApi", level);
