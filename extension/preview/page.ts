/** The preview's page: a frame without a word or a style of its own, under a policy that lets nothing else in. */
export interface PageParts {
  /** The language of the page's words, as a BCP 47 tag. */
  readonly language: string;
  readonly nonce: string;
  readonly cspSource: string;
  readonly script: string;
  /** The picture's rules first, then the page's own. */
  readonly styles: readonly string[];
}

export function policy(parts: Pick<PageParts, 'nonce' | 'cspSource'>): string {
  return [
    `default-src 'none'`,
    `base-uri 'none'`,
    `form-action 'none'`,
    `img-src ${parts.cspSource} data:`,
    `style-src ${parts.cspSource}`,
    `script-src 'nonce-${parts.nonce}'`,
  ].join('; ');
}

export function pageHtml(parts: PageParts): string {
  return `<!DOCTYPE html>
<html lang="${parts.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy(parts)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
${parts.styles.map((style) => `<link rel="stylesheet" href="${style}">`).join('\n')}
<title>Linewright</title>
</head>
<body>
<div id="tools" role="toolbar"></div>
<div id="notice" role="status" hidden><span id="notice-text"></span> <button id="notice-go" type="button"></button></div>
<main>
<div id="canvas" role="application" tabindex="0" aria-describedby="keys"><svg id="stage" xmlns="http://www.w3.org/2000/svg"></svg></div>
<section id="list" aria-labelledby="list-title" hidden><h2 id="list-title"></h2><ul id="list-items"></ul></section>
</main>
<p id="keys" hidden></p>
<p id="live" role="status" aria-live="polite"></p>
<script nonce="${parts.nonce}" src="${parts.script}"></script>
</body>
</html>
`;
}

/** A fresh one for every page, from the browser's and Node's own source of chance. */
export function createNonce(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(24));
  return btoa(String.fromCharCode(...bytes));
}
