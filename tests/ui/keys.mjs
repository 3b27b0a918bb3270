// The same taps without a pointer: by keyboard alone, and by the names that a screen reader says. Neither ever clicks at a place.

import { until } from "./driver.mjs";

const HOLD_MS = 2_300;
/** No screen has more stops of the tab key. */
const STOPS = 400;

const waiting = (page) => (what, says) => until(what).catch(async (problem) => { throw new Error(`never came true: ${says}. The screen says: ${(await page.locator("body").innerText()).slice(0, 600)}`, { cause: problem }); });

// What both read of a screen: addresses and texts, as a person looks at it.
const looking = (page) => ({
  go: async (hash) => { await page.evaluate((to) => { location.hash = to; }, hash); await page.waitForTimeout(150); },
  text: async (css) => (await page.locator(css).first().innerText()).trim(),
  run: (script) => page.evaluate(`(() => { ${script} })()`),
  until: waiting(page),
});

/**
 * Hands that only press keys. An element is reached by the tab key, radio buttons by the arrows inside their group; what the
 * tab key never reaches fails the test.
 */
export function byKeys(page) {
  const press = (key) => page.keyboard.press(key);

  // A screen that is drawn anew between two presses may take a stop away, so the way is gone twice.
  async function reach(css, text) {
    await until(() => page.evaluate(([where, says]) => [...document.querySelectorAll(where)].some((one) => one.textContent.includes(says ?? "")), [css, text]));
    for (let n = 0; n < 2 * STOPS; n += 1) {
      const found = await page.evaluate(([where, says]) => {
        const wanted = [...document.querySelectorAll(where)].find((one) => one.checkVisibility?.() !== false && one.textContent.includes(says ?? ""));
        const here = document.activeElement;
        if (!wanted || here === document.body) return false;
        const label = wanted.closest("label") ?? wanted;
        if (wanted === here || label.contains(here) || wanted.contains(here) || here.contains(wanted)) return here.type === "radio" ? "radio" : here.type === "checkbox" ? "checkbox" : true;
        // In a group of radio buttons the tab key stops once; the arrows go on.
        const radio = label.querySelector("input[type=radio]");
        return radio && here.type === "radio" && here.name === radio.name && here.form === radio.form ? "group" : false;
      }, [css, text]);
      if (found === "group") { await press("ArrowDown"); continue; }
      if (found) return found;
      await press("Tab");
    }
    throw new Error(`the tab key never reaches ${css}${text ? ` “${text}”` : ""}`);
  }

  async function use(css, text) {
    const what = await reach(css, text);
    if (what === "radio" || what === "checkbox") { if (!(await page.evaluate(() => document.activeElement.checked))) await press(" "); }
    else await press("Enter");
  }

  return {
    ...looking(page),
    click: (css) => use(css),
    clickText: (css, text) => use(css.replace(/\s+b$/, ""), text),
    hold: async (css) => {
      await reach(css);
      await page.keyboard.down("Enter");
      await page.waitForTimeout(HOLD_MS);
      await page.keyboard.up("Enter");
    },
    type: async (css, text) => {
      await reach(css);
      if (await page.evaluate(() => document.activeElement.type === "date")) {
        const [year, month, day] = text.split("-");
        // A date field takes its parts in the order of the page's language, English of the United States in Chromium.
        await page.keyboard.type(`${month}${day}${year}`);
        return;
      }
      await press("Control+A");
      await page.keyboard.type(text);
    },
    choose: async (css, value) => {
      await reach(css);
      const label = await page.evaluate((wanted) => [...document.activeElement.options].find((one) => one.value === wanted).label, value);
      await page.keyboard.type(label);
    },
    file: async (css, path) => {
      // A screen that has only just arrived takes the focus to its heading once more.
      await until(async () => {
        await reach(css);
        const [dialog] = await Promise.all([page.waitForEvent("filechooser", { timeout: 2_000 }), press("Enter")]);
        await dialog.setFiles(path);
        return true;
      });
    },
    draw: async (css, points) => {
      await reach(css);
      await press(" ");
      for (let n = 0; n < points.length * 2; n += 1) await press(["Shift+ArrowRight", "ArrowUp", "ArrowRight", "ArrowDown"][n % 4]);
      await press(" ");
    },
  };
}

/** What a control of a screen is called for a reader, by its role: how `byNames` finds it, and nothing else. */
async function named(page, css, text) {
  const found = await until(() => page.evaluate(([where, says]) => {
    const wanted = [...document.querySelectorAll(where)].find((one) => one.checkVisibility?.() !== false && one.textContent.includes(says ?? ""));
    if (!wanted) return null;
    const control = wanted.matches("a[href], button, input, select, textarea, canvas, summary") ? wanted : wanted.closest("a[href], button") ?? wanted.closest("label")?.control ?? wanted.querySelector("input");
    // Its own style is the one thing that a new drawing of the screen leaves on an element.
    for (const before of document.querySelectorAll("[style*='--asked']")) before.style.removeProperty("--asked");
    control?.style.setProperty("--asked", "1");
    return Boolean(control);
  }, [css, text]));
  if (!found) throw new Error(`no control at ${css} ${text ?? ""}`);
}

/**
 * Hands that know only what a screen reader says: the accessibility tree gives a control's role and name, and by these alone it
 * is found and used. A control without a name, or with the name and role of another in sight, fails the test.
 */
export function byNames(page) {
  const session = page.context().newCDPSession(page);

  // Role and name as the browser computes them for a reader.
  async function told(css, text) {
    await named(page, css, text);
    const cdp = await session;
    const { result } = await cdp.send("Runtime.evaluate", { expression: `document.querySelector("[style*='--asked']")` });
    const { nodes } = await cdp.send("Accessibility.getPartialAXTree", { objectId: result.objectId, fetchRelatives: false });
    const [node] = nodes;
    return { role: node.role?.value, name: node.name?.value ?? "", ignored: node.ignored };
  }

  async function find(css, text) {
    const { role, name, ignored } = await told(css, text);
    if (ignored || !name.trim()) throw new Error(`a reader hears no name at ${css} ${text ?? ""} (${role})`);
    const roles = { Date: "textbox", LabelText: "textbox", MenuListPopup: "combobox", application: "application" };
    const found = page.getByRole(roles[role] ?? role, { name, exact: true });
    return { found, name, role };
  }

  async function one(css, text) {
    for (let tries = 0; ; tries += 1) {
      const { found, name, role } = await find(css, text);
      const n = await found.count();
      if (n === 1) return found;
      if (n > 1) {
        // Rows of a list may be called alike; within its own region or group each must be alone.
        const apart = page.locator(":is(section, fieldset, form, li, article, dialog[open], .deck)").filter({ has: page.locator("[style*='--asked']") }).last().getByRole(role, { name, exact: true });
        if (await apart.count() === 1) return apart;
      }
      if (tries > 20) throw new Error(`${n} controls are called “${name}” (${role})`);
      await page.waitForTimeout(100);
    }
  }

  // A reader's press has no length and no place.
  const press = async (css, text) => (await one(css, text)).evaluate((control) => control.click());

  return {
    ...looking(page),
    click: (css) => press(css),
    clickText: (css, text) => press(css, text),
    // Who can't hold presses twice.
    hold: async (css) => { await press(css); await page.waitForTimeout(300); await press(css); },
    type: async (css, text) => (await one(css)).fill(text),
    choose: async (css, value) => (await one(css)).selectOption(value),
    file: async (css, path) => (await one(css)).setInputFiles(path),
    draw: async (css, points) => {
      await (await one(css)).focus();
      await page.keyboard.press(" ");
      for (let n = 0; n < points.length * 2; n += 1) await page.keyboard.press(["Shift+ArrowRight", "ArrowUp", "ArrowRight", "ArrowDown"][n % 4]);
      await page.keyboard.press(" ");
    },
  };
}
