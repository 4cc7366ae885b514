export * from "./arguments";
export * from "./cell";
export * from "./declaration";
export * from "./vocabulary";
