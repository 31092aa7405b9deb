/** The names of the forms that a tube end is given; `none` is a plain square end. */

export const flareForms = ['double-45', 'bubble', 'single-37', 'single-45', 'none'] as const;

export type FlareForm = (typeof flareForms)[number];

/** How a form is spoken of in a sentence. */
export const flareWords: Readonly<Record<FlareForm, string>> = {
  'double-45': 'a 45° double flare',
  bubble: 'a bubble flare',
  'single-37': 'a 37° single flare',
  'single-45': 'a 45° single flare',
  none: 'a plain square end',
};
