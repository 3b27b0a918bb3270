// The script that builds the phone package, where it can't, and its lines in a manifest.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";

const script = (name) => fileURLToPath(new URL(`../../src-tauri/${name}`, import.meta.url));
let folder;
before(() => { folder = mkdtempSync(join(tmpdir(), "mendline-apk-")); });
after(() => rmSync(folder, { recursive: true, force: true }));

const run = (name, words, env) => spawnSync(script(name), words, { encoding: "utf8", env: { PATH: process.env.PATH, HOME: process.env.HOME, ...env } });

/** A program of that name that prints one line. */
function fake(path, prints = "") {
  mkdirSync(join(path, ".."), { recursive: true });
  writeFileSync(path, `#!/bin/sh\necho '${prints}'\n`);
  chmodSync(path, 0o755);
}

test("everything that is missing is named at once, and nothing is begun", () => {
  fake(join(folder, "none/rustc"), join(folder, "no-sysroot"));
  const { status, stdout, stderr } = run("build-apk.sh", [], { PATH: `${join(folder, "none")}:${process.env.PATH}`, JAVA_HOME: join(folder, "no-jdk") });
  assert.equal(status, 1, stderr);
  assert.equal(stdout, "");
  for (const part of ["ANDROID_HOME", "NDK_HOME", "JDK", "rustup target add aarch64-linux-android"]) assert.ok(stderr.includes(part), `${part} is not named: ${stderr}`);
});

test("a folder that holds only its name is no SDK", () => {
  const { status, stderr } = run("build-apk.sh", ["--check"], { ANDROID_HOME: folder, NDK_HOME: folder });
  assert.equal(status, 1);
  assert.match(stderr, /a platform and the build tools in ANDROID_HOME/);
  assert.match(stderr, /the compilers of the NDK/);
});

test("with all of it there, it says so", () => {
  for (const part of ["platforms", "build-tools", "ndk/toolchains/llvm/prebuilt", "sysroot/lib/rustlib/aarch64-linux-android"]) mkdirSync(join(folder, part), { recursive: true });
  fake(join(folder, "jdk/bin/javac"));
  for (const tool of ["cargo", "npm"]) fake(join(folder, "bin", tool));
  fake(join(folder, "bin/rustc"), join(folder, "sysroot"));
  const { status, stdout, stderr } = run("build-apk.sh", ["--check"], { ANDROID_HOME: folder, NDK_HOME: join(folder, "ndk"), JAVA_HOME: join(folder, "jdk"), PATH: `${join(folder, "bin")}:${process.env.PATH}` });
  assert.equal(status, 0, stderr);
  assert.match(stdout, /Everything is there/);
});

test("a wrong word and a wrong processor are refused", () => {
  assert.equal(run("build-apk.sh", ["--fast"]).status, 2);
  assert.match(run("build-apk.sh", ["--check"], { TARGETS: "sparc" }).stderr, /unknown target: sparc/);
});

test("the manifest gets each line once, and stays XML", () => {
  const manifest = join(folder, "AndroidManifest.xml");
  writeFileSync(manifest, `<?xml version="1.0" encoding="utf-8"?>
<manifest xmlns:android="http://schemas.android.com/apk/res/android">
    <uses-permission android:name="android.permission.INTERNET" />
    <application android:label="@string/app_name">
        <activity android:name=".MainActivity" />
    </application>
</manifest>
`);
  assert.equal(run("android-manifest.sh", [manifest]).status, 0);
  const once = readFileSync(manifest, "utf8");
  assert.equal(run("android-manifest.sh", [manifest]).status, 0);
  assert.equal(readFileSync(manifest, "utf8"), once);
  // Python's own parser reads it; the permissions stand beside the application, not in it.
  const read = `import sys, xml.etree.ElementTree as tree
root = tree.parse(sys.argv[1]).getroot()
print(*(one.get("{http://schemas.android.com/apk/res/android}name") for one in root if one.tag.startswith("uses-")), sep="\\n")`;
  const { stdout, status } = spawnSync("python3", ["-c", read, manifest], { encoding: "utf8" });
  assert.equal(status, 0);
  const names = stdout.trim().split("\n");
  assert.equal(new Set(names).size, names.length);
  for (const name of ["permission.INTERNET", "permission.ACCESS_FINE_LOCATION", "permission.POST_NOTIFICATIONS", "permission.VIBRATE", "hardware.camera"]) assert.ok(names.includes(`android.${name}`), name);
  assert.equal(run("android-manifest.sh", ["/dev/null"]).status, 1);
});
