/** The schematic: a system becomes a picture, the picture is placed, the placed picture becomes SVG. */

export type { LayoutEngine } from './layout/engine.ts';
export { type ListedPart, listingOf } from './listing.ts';
export { idShowing, originOf } from './origin-of.ts';
export type { Picture, PictureLine, PictureNode } from './picture.ts';
export { type PictureFacts, pictureOf } from './picture-of.ts';
export { type PlaceOptions, place } from './place.ts';
export type { Placed, Placement, PlaceResult } from './placed.ts';
export { placementText, readPlacement } from './placement-text.ts';
export { themeDeclarations, windowStyles } from './svg/styles.ts';
export { type SvgOptions, svgOf } from './svg.ts';
export { type ThemeName, type ThemeVariable, themes, themeVariables } from './themes.ts';
