/** Stands in the built page where each answer puts a word of its own, by which styles written at run time are known. */
export const STYLE_WORD = 'ripecell-style-word';

/** The one policy by which the page may start a script from an address; see "Trusted Types" (w3.org/TR/trusted-types). */
export const OWN_SCRIPTS = 'ripecell-own-scripts';
