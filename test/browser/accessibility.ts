import { source as axeSource } from "axe-core";
import type { Page } from "playwright-core";

declare global {
  interface Window {
    /** Put there by `prepare`. */
    colors: {
      /** How far two colors are apart, 1 to 21, as WCAG reckons. */
      apart(one: string, other: string): number;
      isPaint(color: string): boolean;
      /** What an element stands on. */
      groundOf(element: Element | null): string;
    };
    /** What the focus met on a walk, in order. */
    walk: { left: boolean; readonly stops: { element: HTMLElement; stop: Omit<Stop, "name" | "shown"> }[] };
  }
}

/** Puts axe and what the measures below share into the page, past its content policy. */
export async function prepare(page: Page): Promise<void> {
  await page.evaluate(axeSource);
  await page.evaluate(() => {
    const lightness = (color: string): number => {
      const parts = (color.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
      const [red = 0, green = 0, blue = 0] = parts
        .map((part) => (color.startsWith("color(") ? part : part / 255))
        .map((part) => (part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const isPaint = (color: string) => color !== "none" && !/^rgba.*, 0\)$/.test(color);
    window.colors = {
      isPaint,
      apart(one, other) {
        const [low = 0, high = 0] = [lightness(one), lightness(other)].sort((a, b) => a - b);
        return (high + 0.05) / (low + 0.05);
      },
      groundOf(element) {
        for (let at = element; at; at = at.parentElement) {
          const { backgroundColor } = getComputedStyle(at);
          if (isPaint(backgroundColor)) return backgroundColor;
        }
        return "rgb(255, 255, 255)";
      },
    };
  });
}

interface Scope {
  /** Selector of the part looked at, the whole page where none is given. */
  readonly within?: string;
  readonly without?: string[];
  /** Only these rules of axe. */
  readonly rules?: string[];
}

/** Violations of WCAG 2.2 AA, and of good practice, that a program can see, with the places. */
export function violations(page: Page, scope: Scope = {}): Promise<string[]> {
  return page.evaluate(async ({ within = "html", without, rules }) => {
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
    const context = { include: [[within]], ...(without && { exclude: without.map((part) => [part]) }) };
    const runOnly = rules ? { type: "rule" as const, values: rules } : tags;
    const { violations: found } = await window.axe.run(context, { runOnly });
    return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  }, scope);
}

/** One stop of the focus, measured when it has come to rest; places are those of the whole page. */
export interface Stop {
  readonly what: string;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  /** Why it cannot be seen where the focus is; empty where it can. */
  readonly unseen: string;
  /** What a screen reader calls it. */
  readonly name: string;
  /** The words that stand on it. */
  readonly shown: string;
}

/**
 * Presses Tab from the top of a part until the focus leaves it; fails where it goes round in circles. Of a list of
 * hundreds the beginning and the end are gone through.
 */
export async function tabThrough(page: Page, within: string): Promise<Stop[]> {
  await page.evaluate(watchFocus, within);
  for (let pressed = 10; pressed <= 200; pressed += 10) {
    for (let key = 0; key < 10; key++) await page.keyboard.press("Tab");
    if (await page.evaluate(() => window.walk.left)) return page.evaluate(namedStops);
    if (pressed === 150) await page.evaluate(focusNearEnd, within);
  }
  throw new Error(`The focus never leaves ${within}.`);
}

/** Runs in the page. */
function focusNearEnd(within: string): void {
  [...document.querySelectorAll<HTMLElement>(`${within} button`)].at(-20)?.focus();
}

/** Runs in the page. A key comes up where the focus has come to rest, scrolled to. */
function watchFocus(within: string): void {
  const root = document.querySelector<HTMLElement>(within);
  if (!root) throw new Error(`There is no ${within}.`);
  const unseenReason = (at: Element): string => {
    const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(at);
    if (outlineStyle === "none" || parseFloat(outlineWidth) < 2) return "no ring";
    if (window.colors.apart(outlineColor, window.colors.groundOf(at.parentElement)) < 3) return "a faint ring";
    // A link over two lines has a rectangle for each, and nothing of it may stand in the middle of both.
    const { top, bottom, left, right } = at.getClientRects()[0] ?? at.getBoundingClientRect();
    const [y1, y2] = [Math.max(top, 0), Math.min(bottom, innerHeight)];
    const [x1, x2] = [Math.max(left, 0), Math.min(right, innerWidth)];
    if (y2 - y1 < 1 || x2 - x1 < 1) return "out of sight";
    const hit = document.elementFromPoint((x1 + x2) / 2, (y1 + y2) / 2);
    return hit && at.contains(hit) ? "" : `covered by ${hit?.outerHTML.slice(0, 80)}`;
  };
  const walk: Window["walk"] = { left: false, stops: [] };
  window.walk = walk;
  root.tabIndex = -1;
  root.focus();
  document.addEventListener(
    "keyup",
    () => {
      const at = document.activeElement;
      if (walk.left || !(at instanceof HTMLElement)) return;
      walk.left = at === root || !root.contains(at);
      if (walk.left) return;
      const { top, bottom, left } = at.getBoundingClientRect();
      const stop = {
        what: `${at.tagName.toLowerCase()}#${at.id || (at.textContent ?? "").slice(0, 40)}`,
        top: top + scrollY + root.scrollTop,
        bottom: bottom + scrollY + root.scrollTop,
        left: left + (at.closest(".scroll")?.scrollLeft ?? 0),
        unseen: unseenReason(at),
      };
      walk.stops.push({ element: at, stop });
    },
    { capture: true },
  );
}

/** Runs in the page. */
function namedStops(): Stop[] {
  window.axe.setup(document);
  const named = window.walk.stops.map(({ element, stop }) => ({
    ...stop,
    name: window.axe.commons.text.accessibleText(element),
    shown: element instanceof HTMLButtonElement ? element.innerText : "",
  }));
  window.axe.teardown();
  return named;
}

/** Stops that come before something above them, or left of them in the same line. */
export function outOfOrder(stops: readonly Stop[]): string[] {
  return stops.flatMap((stop, index) => {
    const before = stops[index - 1];
    if (!before) return [];
    const isLower = stop.top >= before.top - 1;
    const isBeside = stop.top < before.bottom && stop.bottom > before.top && stop.left > before.left;
    const isSameLine = Math.abs(stop.top - before.top) <= 1;
    return isBeside || (isLower && !(isSameLine && stop.left < before.left)) ? [] : [`${before.what} → ${stop.what}`];
  });
}

/** Controls smaller than 24 by 24 px. A box to tick counts with its label, as a press on that ticks it too. */
export function smallTargets(page: Page, within: string): Promise<string[]> {
  return page.evaluate((root) => {
    const controls = document.querySelectorAll<HTMLElement>(`${root} :is(button, a, input, select, textarea, summary)`);
    return [...controls].flatMap((control) => {
      const parts = [control, ...(control instanceof HTMLInputElement ? (control.labels ?? []) : [])];
      const boxes = parts.map((part) => part.getBoundingClientRect());
      const width = Math.max(...boxes.map((box) => box.width));
      const height = Math.max(...boxes.map((box) => box.height));
      if (!control.checkVisibility() || (width >= 24 && height >= 24)) return [];
      return [`${control.id || control.textContent} ${width} × ${height}`];
    });
  }, within);
}

/** Headings that skip a step on the way down; the first may be of any step. */
export function skippedHeadings(page: Page, within: string): Promise<string[]> {
  return page.evaluate((root) => {
    const headings = [...document.querySelectorAll<HTMLElement>(`${root} :is(h1, h2, h3, h4, h5, h6)`)];
    const step = (heading: HTMLElement | undefined) => Number(heading?.tagName.slice(1) ?? 9);
    return headings
      .filter((heading, index) => step(heading) > step(headings[index - 1]) + 1)
      .map(({ textContent }) => textContent ?? "");
  }, within);
}

/** What sticks out of the page sideways or is cut at an edge of its box. Tables may scroll in a box of their own. */
export function cutOff(page: Page, within: string): Promise<string[]> {
  return page.evaluate((root) => {
    const room = document.documentElement.clientWidth;
    return [...document.querySelectorAll<HTMLElement | SVGElement>(`${root} *`)].flatMap((part) => {
      if (!part.checkVisibility() || part.closest(".unseen, svg *, option")) return [];
      if (part.parentElement?.closest(".scroll") && !part.matches("caption")) return [];
      const { left, right, width } = part.getBoundingClientRect();
      const says = `${part.tagName.toLowerCase()}#${part.id} ${(part.textContent ?? "").slice(0, 30)}`;
      if (width > 0 && (left < -0.5 || right > room + 0.5)) return [`out of the page: ${says}`];
      // A line of words may be longer than its box, and scrolls in it.
      const mayScroll = part.matches(".scroll, input:not(.number)");
      const isBox = part.matches("button") || getComputedStyle(part).overflowX !== "visible";
      if (isBox && !mayScroll && part.scrollWidth > part.clientWidth + 1) return [`cut: ${says}`];
      return [];
    });
  }, within);
}

/** Controls without an edge, and words and marks of drawings, that do not stand out from their ground. */
export function faintThings(page: Page, within: string): Promise<string[]> {
  return page.evaluate((root) => {
    const { apart, groundOf, isPaint } = window.colors;
    const all = (selector: string) =>
      [...document.querySelectorAll<HTMLElement>(`${root} :is(${selector})`)].filter((part) => part.checkVisibility());
    const edged = "button:is(.button-plain, .button-main), input[type=text], select, textarea";
    const controls = all(edged).filter((control) => {
      const { borderTopColor, borderTopWidth } = getComputedStyle(control);
      return borderTopWidth === "0px" || apart(borderTopColor, groundOf(control.parentElement)) < 3;
    });
    const drawn = all("svg[role=img]").flatMap((svg) => {
      const [, , width] = (svg.getAttribute("viewBox") ?? "").split(" ");
      const sheet = [...svg.children].find((part) => part.tagName === "rect" && part.getAttribute("width") === width);
      const ground = sheet ? getComputedStyle(sheet).fill : groundOf(svg);
      return [...svg.querySelectorAll("text, line, path, rect")].filter((mark) => {
        const { fill, stroke } = getComputedStyle(mark);
        // Grounds of letters, patterns and what they are made of are no marks.
        if (mark.closest("defs") || fill.startsWith("url") || (mark.tagName === "rect" && fill === ground))
          return false;
        if (mark.tagName === "text") return apart(fill, ground) < 4.5;
        return ![fill, stroke].filter(isPaint).some((paint) => apart(paint, ground) > 1.2);
      });
    });
    return [...controls, ...drawn].map((part) => part.outerHTML.slice(0, 160));
  }, within);
}

/** What would still move: transitions, animations, smooth scrolling. */
export function motions(page: Page, within: string): Promise<string[]> {
  return page.evaluate((root) => {
    const moving = [...document.querySelectorAll(`${root}, ${root} *`)].filter((part) => {
      const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(part);
      return /[1-9]/.test(transitionDuration) || animationName !== "none" || scrollBehavior === "smooth";
    });
    const running = document.getAnimations().map(() => "an animation runs");
    return [...running, ...moving.map((part) => part.outerHTML.slice(0, 80))];
  }, within);
}
