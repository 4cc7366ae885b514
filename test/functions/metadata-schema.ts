const text = { type: "string", minLength: 1 };

/** What Excel accepts as a functions.json, as its documentation lists it; nothing else may stand in the file. */
export const metadataSchema = {
  type: "object",
  required: ["functions"],
  additionalProperties: false,
  properties: {
    allowCustomDataForDataTypeAny: { type: "boolean" },
    allowErrorForDataTypeAny: { type: "boolean" },
    functions: { type: "array", minItems: 1, items: { $ref: "#/definitions/function" } },
    enums: { type: "array", items: { $ref: "#/definitions/enum" } },
  },
  definitions: {
    function: {
      type: "object",
      required: ["id", "name", "description", "parameters", "result"],
      additionalProperties: false,
      properties: {
        id: { type: "string", pattern: "^[A-Za-z0-9._]+$" },
        name: text,
        description: text,
        helpUrl: { type: "string", pattern: "^https://" },
        parameters: { type: "array", maxItems: 127, items: { $ref: "#/definitions/parameter" } },
        result: { $ref: "#/definitions/result" },
        options: { type: "object" },
      },
    },
    parameter: {
      type: "object",
      required: ["name", "description", "type", "dimensionality"],
      additionalProperties: false,
      properties: {
        name: { type: "string", pattern: "^[A-Za-z][A-Za-z0-9]*$" },
        description: text,
        type: { enum: ["any", "boolean", "number", "string"] },
        dimensionality: { enum: ["scalar", "matrix"] },
        optional: { type: "boolean" },
        repeating: { type: "boolean" },
        customEnumId: text,
      },
    },
    result: {
      type: "object",
      required: ["type", "dimensionality"],
      additionalProperties: false,
      properties: {
        type: { enum: ["any", "boolean", "number", "string"] },
        dimensionality: { enum: ["scalar", "matrix"] },
      },
    },
    enum: {
      type: "object",
      required: ["id", "type", "values"],
      additionalProperties: false,
      properties: {
        id: { type: "string", pattern: "^[A-Z][A-Z0-9_]*$" },
        type: { enum: ["string", "number"] },
        values: { type: "array", minItems: 1, items: { $ref: "#/definitions/enumValue" } },
      },
    },
    enumValue: {
      type: "object",
      required: ["name", "stringValue"],
      additionalProperties: false,
      properties: { name: text, stringValue: text, tooltip: text },
    },
  },
} as const;
