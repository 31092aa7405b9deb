/** The page of a sheet: a frame without a word or a style of its own, under the policy of the preview's page. */
import { type PageParts, policy } from '../preview/page.ts';

export function sheetPageHtml(parts: PageParts): string {
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
<div id="notice" role="status" hidden></div>
<div id="paper" role="region" tabindex="0"><main id="sheet"></main></div>
<script nonce="${parts.nonce}" src="${parts.script}"></script>
</body>
</html>
`;
}
