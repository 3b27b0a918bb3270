// The real window, driven through WebKitWebDriver. Source: W3C WebDriver, and WebKitGTK's webkitgtk:browserOptions.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { createServer } from "node:net";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { BUILT, emptyFolder } from "./mendline.mjs";

/** The key under which WebDriver names an element. */
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";
/** Without the first two the window takes no orders. Without the others it needs a graphics card. */
const AUTOMATION = {
  TAURI_AUTOMATION: "true",
  TAURI_WEBVIEW_AUTOMATION: "true",
  WEBKIT_DISABLE_COMPOSITING_MODE: "1",
  WEBKIT_DISABLE_DMABUF_RENDERER: "1",
};

/** Opens the window on an empty data folder, or on `data`. */
export async function openWindow({ data } = {}) {
  const folder = data ? { path: data, remove: () => {} } : await emptyFolder();
  const port = await freePort();
  // In a process group of its own, so that the window can be ended with it. Its output would keep the runner waiting.
  const env = { ...process.env, ...AUTOMATION, MENDLINE_DATA: folder.path };
  const driver = spawn("WebKitWebDriver", [`--port=${port}`], { detached: true, stdio: "ignore", env });
  await once(driver, "spawn");
  const window = new Window(`http://127.0.0.1:${port}`, folder.path);
  const end = async () => {
    await window.close();
    const ended = once(driver, "exit");
    process.kill(-driver.pid, "SIGKILL");
    await ended;
    await folder.remove();
  };
  try {
    await until(() => window.isReady());
    await window.open(join(BUILT, "mendline-app"));
  } catch (problem) {
    await end();
    throw problem;
  }
  return Object.assign(window, { end });
}

class Window {
  constructor(driver, data) {
    this.driver = driver;
    this.data = data;
  }

  async isReady() {
    return (await fetch(`${this.driver}/status`, { signal: AbortSignal.timeout(2_000) })).ok;
  }

  async open(binary) {
    const capabilities = { alwaysMatch: { "webkitgtk:browserOptions": { binary, args: [] } } };
    const { sessionId } = await this.send("POST", "/session", { capabilities });
    this.session = `/session/${sessionId}`;
  }

  /** Ending the driver alone would leave the window behind. */
  async close() {
    if (this.session) await this.send("DELETE", this.session).catch(() => {});
    this.session = undefined;
  }

  async send(method, path, body) {
    const answer = await fetch(this.driver + path, {
      method,
      headers: { "content-type": "application/json" },
      body: body && JSON.stringify(body),
      signal: AbortSignal.timeout(30_000),
    });
    const { value } = await answer.json();
    if (!answer.ok) throw new Error(`${method} ${path}: ${value.error}: ${value.message}`);
    return value;
  }

  /** Waits for an element and returns its path. `css` is a selector. */
  async find(css) {
    const found = await until(() => this.send("POST", `${this.session}/element`, { using: "css selector", value: css }));
    return `${this.session}/element/${found[ELEMENT]}`;
  }

  async text(css) {
    return this.send("GET", `${await this.find(css)}/text`);
  }

  async click(css) {
    await this.send("POST", `${await this.find(css)}/click`, {});
  }

  /** Clicks an element that is there now; it does not wait for it. */
  async clickNow(css) {
    const found = await this.send("POST", `${this.session}/element`, { using: "css selector", value: css });
    await this.send("POST", `${this.session}/element/${found[ELEMENT]}/click`, {});
  }

  async type(css, text) {
    await this.send("POST", `${await this.find(css)}/value`, { text });
  }

  /** Runs the body of an async function in the page and returns what it returns. */
  async run(script, ...args) {
    const wrapped = `const done = arguments[arguments.length - 1];
      (async (...args) => { ${script} })(...[...arguments].slice(0, -1)).then((value) => done({ value }), (problem) => done({ problem: String(problem) }));`;
    const { value, problem } = await this.send("POST", `${this.session}/execute/async`, { script: wrapped, args });
    if (problem) throw new Error(problem);
    return value;
  }

  /** Draws a line with the mouse over an element; points are in thousandths of its width and height. */
  async draw(css, points) {
    const box = await this.run(`const found = document.querySelector(args[0]); found.scrollIntoView({ block: "center" }); const { left, top, width, height } = found.getBoundingClientRect(); return { left, top, width, height };`, css);
    const at = ([x, y]) => ({ type: "pointerMove", duration: 20, x: Math.round(box.left + (x / 1000) * box.width), y: Math.round(box.top + (y / 1000) * box.height) });
    const [first, ...rest] = points.map(at);
    const actions = [first, { type: "pointerDown", button: 0 }, ...rest, { type: "pointerUp", button: 0 }];
    await this.send("POST", `${this.session}/actions`, { actions: [{ type: "pointer", id: "mouse", parameters: { pointerType: "mouse" }, actions }] });
  }

  /** Holds the mouse down on an element. */
  async hold(css, ms) {
    const { x, y } = await this.run(`const { left, top, width, height } = document.querySelector(args[0]).getBoundingClientRect(); return { x: Math.round(left + width / 2), y: Math.round(top + height / 2) };`, css);
    const actions = [{ type: "pointerMove", duration: 0, x, y }, { type: "pointerDown", button: 0 }, { type: "pause", duration: ms }, { type: "pointerUp", button: 0 }];
    await this.send("POST", `${this.session}/actions`, { actions: [{ type: "pointer", id: "mouse", parameters: { pointerType: "mouse" }, actions }] });
  }

  /** Makes the page this large, in CSS px. */
  async resize(width, height) {
    const [frame, bar] = await this.run("return [outerWidth - innerWidth, outerHeight - innerHeight]");
    await this.send("POST", `${this.session}/window/rect`, { x: 0, y: 0, width: width + frame, height: height + bar });
    await until(() => this.run("return innerWidth === args[0] && innerHeight === args[1]", width, height)).catch(() => {});
  }

  /** Returns a picture of the page as PNG. */
  async screenshot() {
    return Buffer.from(await this.send("GET", `${this.session}/screenshot`), "base64");
  }
}

/** Tries again until `attempt` returns something true, for 15 s. */
export async function until(attempt) {
  const end = Date.now() + 15_000;
  for (;;) {
    const outcome = await Promise.resolve().then(attempt).then((value) => ({ value }), (problem) => ({ problem }));
    if (outcome.value) return outcome.value;
    if (Date.now() > end) throw outcome.problem ?? new Error(`never came true: ${attempt}`);
    await pause(50);
  }
}

async function freePort() {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const { port } = server.address();
  server.close();
  await once(server, "close");
  return port;
}
