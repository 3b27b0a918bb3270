import test from "node:test";
import assert from "node:assert/strict";
import "../words.mjs";
import { attr, escape, flag, html, raw, vars } from "../../../ui/html.js";

test("what a person typed cannot become markup", () => {
  const typed = `<img src=x onerror="alert('1')">&`;
  assert.equal(String(html`<b>${typed}</b>`), "<b>&lt;img src=x onerror=&quot;alert(&#39;1&#39;)&quot;&gt;&amp;</b>");
  assert.equal(escape(7), "7");
});

test("html inside html is not escaped again", () => {
  assert.equal(String(html`<ul>${["a", "<"].map((x) => html`<li>${x}</li>`)}</ul>`), "<ul><li>a</li><li>&lt;</li></ul>");
});

test("an attribute value cannot break out of its quotes", () => {
  assert.equal(String(html`<i ${attr("title", 'a"b')}>`), '<i title="a&quot;b">');
  assert.equal(String(html`<i ${attr("title", undefined)}>`), "<i >");
});

test("nothing, and yes or no, put in nothing; zero is shown", () => {
  assert.equal(String(html`[${null}${undefined}${false}${true}${0}]`), "[0]");
});

test("flags and custom properties become attributes", () => {
  assert.equal(String(html`<input ${flag("checked", true)}${flag("disabled", false)}>`), "<input checked>");
  assert.equal(String(html`<i ${vars({ n: 34, m: 18.7 })}></i>`), '<i data-css="--n:34;--m:18.7"></i>');
});

test("only raw text of our own passes unescaped", () => {
  assert.equal(String(html`${raw("<br>")}${"<br>"}`), "<br>&lt;br&gt;");
});
