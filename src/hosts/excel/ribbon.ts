/** Ribbon commands by the names in the manifest, with the part of the pane that each opens. */
export const ribbonViews = { openFind: "find", openCheck: "check" } as const;

export type RibbonView = (typeof ribbonViews)[keyof typeof ribbonViews];

/**
 * Lets the buttons of the ribbon open parts of the pane. The pane may be closed while its page goes on running: it is
 * shown first.
 */
export function onRibbon(open: (view: RibbonView) => void): void {
  for (const [command, view] of Object.entries(ribbonViews)) {
    Office.actions.associate(command, async (event: Office.AddinCommands.Event) => {
      try {
        await Office.addin.showAsTaskpane();
        open(view);
      } finally {
        // Excel takes no other command until it is told that this one is over.
        event.completed();
      }
    });
  }
}
