/**
 * Commands of the W3C WebDriver, as far as a walk through the page needs them: to WebKit over HTTP through its WebKitWebDriver,
 * to Firefox over the socket of its own Marionette, which takes the same commands under other names.
 */
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { createServer, type Socket, connect as toSocket } from "node:net";
import { join } from "node:path";
import { MINI_BROWSER, type Started, startFirefox, startWebKit, WEBKIT_DRIVER } from "./debianBrowsers.ts";
import { until } from "./until.ts";

/** An element of the page, as the protocol hands it over. */
export interface Handle {
  readonly [ELEMENT]: string;
}
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";

export interface WebDriver {
  navigate(url: string): Promise<void>;
  /** `script`: the body of a function. */
  execute(script: string, args: readonly unknown[]): Promise<unknown>;
  click(element: Handle): Promise<void>;
  sendKeys(element: Handle, text: string): Promise<void>;
  /** What the browser itself has complained of in the pages of this address. */
  complaints(url: string): Promise<readonly string[]>;
  quit(): Promise<void>;
}

const WINDOW = { x: 0, y: 0, width: 1440, height: 900 };

/** Firefox in a profile of its own within `folder`. */
export async function firefoxDriver(folder: string): Promise<WebDriver> {
  const profile = mkdtempSync(join(folder, "firefox-"));
  // It takes a free port and writes it down.
  writeFileSync(join(profile, "user.js"), 'user_pref("marionette.port", 0);\n');
  const port = join(profile, "MarionetteActivePort");
  const browser = startFirefox(profile, ["--marionette", "--remote-allow-system-access"]);
  try {
    await until("Firefox has a port", () => existsSync(port) && readFileSync(port, "utf8") !== "");
    const marionette = await Marionette.to(Number(readFileSync(port, "utf8")));
    await marionette.send("WebDriver:NewSession", {});
    await marionette.send("WebDriver:SetWindowRect", WINDOW);
    return {
      navigate: async (url) => void (await marionette.send("WebDriver:Navigate", { url })),
      execute: async (script, args) => inValue(await marionette.send("WebDriver:ExecuteScript", { script, args })),
      click: async (element) => void (await marionette.send("WebDriver:ElementClick", { id: element[ELEMENT] })),
      sendKeys: async (element, text) =>
        void (await marionette.send("WebDriver:ElementSendKeys", { id: element[ELEMENT], text })),
      complaints: (url) => scriptErrors(marionette, url),
      quit: async () => {
        marionette.close();
        browser.stop();
      },
    };
  } catch (error) {
    browser.stop();
    throw error;
  }
}

/** Of the browser's own console: faults of scripts, refusals of the policy. */
async function scriptErrors(marionette: Marionette, url: string): Promise<readonly string[]> {
  await marionette.send("Marionette:SetContext", { value: "chrome" });
  const script = `return Services.console.getMessageArray()
    .filter((one) => one instanceof Ci.nsIScriptError && !(one.flags & one.warningFlag) && one.sourceName.startsWith(arguments[0]))
    .map((one) => one.errorMessage)`;
  const errors = inValue(await marionette.send("WebDriver:ExecuteScript", { script, args: [url] }));
  await marionette.send("Marionette:SetContext", { value: "content" });
  return errors as readonly string[];
}

/** WebKit on a system of that language. */
export async function webKitDriver(language?: string): Promise<WebDriver> {
  const port = await freePort();
  let text = "";
  const driver = await startWebKit(WEBKIT_DRIVER, [`--port=${port}`], language, (more) => {
    text += more;
  });
  const base = `http://127.0.0.1:${port}`;
  try {
    await until("WebKitWebDriver answers", () =>
      fetch(`${base}/status`).then(
        ({ ok }) => ok,
        () => false,
      ),
    );
    const args = ["--automation", "--enable-write-console-messages-to-stdout=true"];
    const browserOptions = { binary: MINI_BROWSER, args };
    const opened = await post(`${base}/session`, {
      capabilities: { alwaysMatch: { "webkitgtk:browserOptions": browserOptions } },
    });
    const session = `${base}/session/${(opened as { sessionId: string }).sessionId}`;
    await post(`${session}/window/rect`, WINDOW);
    return {
      navigate: async (url) => void (await post(`${session}/url`, { url })),
      execute: (script, args) => post(`${session}/execute/sync`, { script, args }),
      click: async (element) => void (await post(`${session}/element/${element[ELEMENT]}/click`, {})),
      sendKeys: async (element, text) => void (await post(`${session}/element/${element[ELEMENT]}/value`, { text })),
      complaints: async () => text.split("\n").filter((line) => /CONSOLE .*(?:ERROR|WARN)/.test(line)),
      quit: () => quit(session, driver),
    };
  } catch (error) {
    driver.stop();
    throw error;
  }
}

/** The browser is asked to go first: what it started may lie in another process group. */
async function quit(session: string, driver: Started): Promise<void> {
  await fetch(session, { method: "DELETE" }).catch(() => undefined);
  driver.stop();
}

async function post(url: string, body: object): Promise<unknown> {
  const response = await fetch(url, { method: "POST", body: JSON.stringify(body) });
  const answer: unknown = await response.json();
  if (!response.ok) throw new Error(`${url}: ${JSON.stringify(inValue(answer)).slice(0, 1000)}`);
  return inValue(answer);
}

const inValue = (answer: unknown): unknown => (answer as { value: unknown }).value;

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as { port: number };
  await new Promise((resolve) => server.close(resolve));
  return port;
}

type Answer = [type: 1, id: number, error: { message: string } | null, result: unknown];

/** Firefox's own protocol: JSON with its length before it; a command is [0, number, name, parameters], an answer [1, number, error, result]. */
class Marionette {
  private readonly socket: Socket;
  private received = Buffer.alloc(0);
  private last = 0;
  private readonly waiting = new Map<number, { resolve(result: unknown): void; reject(error: Error): void }>();

  private constructor(socket: Socket) {
    this.socket = socket;
    socket.on("data", (part: Buffer) => {
      this.received = Buffer.concat([this.received, part]);
      for (let message = this.next(); message !== undefined; message = this.next()) this.take(message);
    });
    socket.on("close", () => {
      for (const { reject } of this.waiting.values()) reject(new Error("Firefox has gone"));
    });
  }

  static async to(port: number): Promise<Marionette> {
    const socket = toSocket(port, "127.0.0.1");
    await new Promise((resolve, reject) => socket.once("connect", resolve).once("error", reject));
    return new Marionette(socket);
  }

  send(command: string, parameters: object): Promise<unknown> {
    const id = ++this.last;
    const text = Buffer.from(JSON.stringify([0, id, command, parameters]));
    return new Promise((resolve, reject) => {
      this.waiting.set(id, { resolve, reject });
      this.socket.write(Buffer.concat([Buffer.from(`${text.length}:`), text]));
    });
  }

  close(): void {
    this.socket.destroy();
  }

  /** The next message, if all of it has arrived. */
  private next(): unknown {
    const colon = this.received.indexOf(":");
    if (colon < 0) return undefined;
    const end = colon + 1 + Number(this.received.subarray(0, colon).toString());
    if (this.received.length < end) return undefined;
    const message: unknown = JSON.parse(this.received.subarray(colon + 1, end).toString());
    this.received = this.received.subarray(end);
    return message;
  }

  private take(message: unknown): void {
    // The first one is a greeting.
    if (!Array.isArray(message)) return;
    const [, id, error, result] = message as Answer;
    const asked = this.waiting.get(id);
    this.waiting.delete(id);
    if (error) asked?.reject(new Error(error.message));
    else asked?.resolve(result);
  }
}
