import { addPart, changePart, escapeXml, replaceOnce, type PackageParts } from "./package-parts";

/** The add-in that a workbook's functions belong to. */
export interface AddIn {
  /** Id and version of the manifest. */
  readonly id: string;
  readonly version: string;
  /** Opens the pane with the workbook. Off unless asked for: without the add-in, Excel would offer to fetch it. */
  readonly opensPane?: boolean;
}

const folder = "xl/webextensions";
const relationships = "http://schemas.openxmlformats.org/package/2006/relationships";
const officeRelationships = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const extensions = "http://schemas.microsoft.com/office/webextensions";
const extensionRelationships = "http://schemas.microsoft.com/office/2011/relationships";
const drawing = "http://schemas.openxmlformats.org/drawingml/2006/main";
const contentTypes = "application/vnd.ms-office";
const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** Extension that lists the functions of an add-in which the workbook calls. */
const functionListUri = "{7C84B067-C214-45C3-A712-C9D94CD141B2}";

/** Says in the file which add-in its functions come from, as Microsoft's [MS-OWEXML] describes it. */
export function addWebExtension(parts: PackageParts, addIn: AddIn, functions: readonly string[]): void {
  addPart(parts, `${folder}/webextension1.xml`, extensionPart(addIn, functions), `${contentTypes}.webextension+xml`);
  addPart(parts, `${folder}/taskpanes.xml`, panesPart(), `${contentTypes}.webextensiontaskpanes+xml`);
  parts.set(
    `${folder}/_rels/taskpanes.xml.rels`,
    `${declaration}<Relationships xmlns="${relationships}"><Relationship Id="rId1" Type="${extensionRelationships}/webextension" Target="webextension1.xml"/></Relationships>`,
  );
  changePart(parts, "_rels/.rels", (xml) =>
    replaceOnce(
      xml,
      "</Relationships>",
      `<Relationship Id="rIdPane" Type="${extensionRelationships}/webextensiontaskpanes" Target="${folder}/taskpanes.xml"/></Relationships>`,
    ),
  );
}

function extensionPart({ id, version, opensPane = false }: AddIn, functions: readonly string[]): string {
  const opens = opensPane ? '<we:property name="Office.AutoShowTaskpaneWithDocument" value="true"/>' : "";
  const ids = functions.map((name) => `<we:customFunctionIds>${escapeXml(name)}</we:customFunctionIds>`).join("");
  const list = functions.length
    ? `<we:extLst><a:ext xmlns:a="${drawing}" uri="${functionListUri}"><we:customFunctionIdList>${ids}</we:customFunctionIdList></a:ext></we:extLst>`
    : "";
  return [
    `${declaration}<we:webextension xmlns:we="${extensions}/webextension/2010/11" id="{${escapeXml(id)}}">`,
    `<we:reference id="${escapeXml(id)}" version="${escapeXml(version)}" store="developer" storeType="Registry"/>`,
    `<we:alternateReferences/><we:properties>${opens}</we:properties><we:bindings/>`,
    `<we:snapshot xmlns:r="${officeRelationships}"/>${list}</we:webextension>`,
  ].join("");
}

function panesPart(): string {
  return [
    `${declaration}<wetp:taskpanes xmlns:wetp="${extensions}/taskpanes/2010/11">`,
    '<wetp:taskpane dockstate="right" visibility="0" width="350" row="1">',
    `<wetp:webextensionref xmlns:r="${officeRelationships}" r:id="rId1"/></wetp:taskpane></wetp:taskpanes>`,
  ].join("");
}
