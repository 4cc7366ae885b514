import { defaultChoices, starters } from "../../../workbook/starters";
import { words } from "../../words";
import type { Action, Desk } from "../action";
import { changePart } from "../change-part";
import { perform } from "../dispatch";
import { isIdle } from "../idle";
import { headingId } from "../parts/text";
import { ownFigures } from "../start/form";
import { unlessRefused } from "../unless-refused";
import { forgetWorkbook } from "../workbook-strip/actions";
import { readFarm } from "./farm-figures";
import { printActions } from "./print-actions";
import type { OverviewState } from "./state";

const say = words.overview;

const changeOverview = changePart("overview");

/** Reads the plan in the workbook and says what matters in it. */
export const readOverview: Action = {
  name: "overview.read",
  label: say.readAgain,
  allowed: ({ overview }) => !overview.filling,
  async perform(desk) {
    const reading = desk.state().overview.reading + 1;
    changeOverview(desk, { reading });
    const part = await figuresNow(desk);
    if (desk.state().overview.reading === reading) changeOverview(desk, part);
  },
};

function figuresNow(desk: Desk): Promise<Partial<OverviewState>> {
  return unlessRefused(
    async () => ({ figures: (await readFarm(desk.host)) ?? null }),
    (says) => ({ figures: null, says }),
  );
}

/** Brings the cell behind a finding in sight. */
export const goToSheet: Action = {
  name: "overview.go",
  label: say.goTo,
  perform: (desk, address) =>
    telling(desk, async () => {
      await desk.host.show(address);
      desk.environment.gridWanted?.();
    }),
};

/** Puts the invented farm's plan into the workbook of the page, in place of nothing that anybody typed. */
export const showExample: Action = {
  name: "overview.example",
  label: say.showExample,
  allowed: isIdle,
  perform: (desk) => fillExample(desk),
};

/** The same on a first visit, unless the person has begun to type meanwhile. */
export const showExampleFirst: Action = {
  name: "overview.first",
  allowed: isIdle,
  async perform(desk) {
    if (desk.environment.example?.isUntouched()) await fillExample(desk);
  },
};

async function fillExample(desk: Desk): Promise<void> {
  const { example } = desk.environment;
  const [starter] = starters;
  if (!example || !starter) return;
  changeOverview(desk, { filling: true, says: undefined });
  await telling(desk, async () => {
    await painted();
    const { makePlan } = await import("../../../workbook/starters/make-plan");
    await example.open(makePlan(starter, defaultChoices));
    forgetWorkbook(desk);
  });
  changeOverview(desk, { filling: false, ...(await figuresNow(desk)) });
  const summary = desk.state().overview.figures?.summarySheet;
  if (summary !== undefined) await telling(desk, () => desk.host.show(`'${summary}'!A1`));
}

/** Begins a plan of one's own: an empty workbook and the form, ready for the person's own figures. */
export const makeItMine: Action = {
  name: "overview.mine",
  label: say.mine,
  allowed: isIdle,
  perform: (desk) =>
    telling(desk, async () => {
      await addEmpty(desk);
      desk.change(
        (state) => ({
          ...state,
          view: "start",
          start: { ...state.start, form: { ...state.start.form, ...ownFigures(state.start.form) } },
        }),
        headingId("start"),
      );
    }),
};

export const emptyWorkbook: Action = {
  name: "overview.empty",
  label: say.empty,
  allowed: isIdle,
  perform: (desk) =>
    telling(desk, async () => {
      await addEmpty(desk);
      changeOverview(desk, { says: say.emptied });
      desk.environment.gridWanted?.();
    }),
};

async function addEmpty(desk: Desk): Promise<void> {
  const { workbooks } = desk.environment;
  if (!workbooks) return;
  await workbooks.add();
  forgetWorkbook(desk);
  changeOverview(desk, { figures: null, says: undefined, reading: desk.state().overview.reading + 1 });
}

function telling(desk: Desk, work: () => Promise<void>): Promise<void> {
  return unlessRefused(work, (says) => changeOverview(desk, { says }));
}

/** Reads the plan a moment after the last of several changes. */
export function readingSoon(desk: Desk): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(() => perform(desk, readOverview, ""), 250);
  };
}

/** Lets the page show what is going on before the next piece of work. */
function painted(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 30));
}

export const overviewActions: readonly Action[] = [
  readOverview,
  goToSheet,
  showExample,
  showExampleFirst,
  makeItMine,
  emptyWorkbook,
  ...printActions,
];
