import { allFunctions } from "../../src/functions";
import { secondAnswers, type SecondAnswer } from "./second-answers";

describe("second answers", () => {
  const answers = secondAnswers();

  it("are looked for behind every worksheet function", () => {
    expect(answers.map(({ name }) => name).sort()).toEqual(allFunctions.map(({ name }) => name).sort());
  });

  it("see a function that a golden test checks and one that none does", () => {
    const of = (wanted: string) => answers.find(({ name }) => name === wanted)?.checkedIn;
    expect(of("REMOVAL")).toContain("removal");
    expect(of("SOURCE")).toEqual([]);
  });

  const families = [...new Set(answers.map(({ family }) => family))];
  it.each(families)("stand behind at least a third of the family %s", (family) => {
    const members = answers.filter((answer) => answer.family === family);
    const isChecked = ({ checkedIn }: SecondAnswer) => checkedIn.length > 0;
    expect(members.filter(isChecked).length / members.length).toBeGreaterThanOrEqual(1 / 3);
  });
});
