/** A decimal digit of any script as 0 to 9: digits stand in runs of ten. */
function plainDigit(digit: string): string {
  const own = digit.normalize('NFKC');
  if (/^\d$/.test(own)) return own;
  const code = digit.codePointAt(0) ?? 0;
  let steps = 0;
  while (/^\p{Nd}$/u.test(String.fromCodePoint(code - steps - 1))) steps += 1;
  return String(steps % 10);
}

/** `½` as ` 1/2`. */
const plainFraction = (fraction: string): string => ` ${fraction.normalize('NFKC').replace('\u2044', '/')}`;

/**
 * What was typed with the signs of a plain keyboard: digits and marks of any width and script, minus signs and dashes,
 * spaces, fractions, degrees, ohms.
 */
export function plainText(text: string): string {
  return text
    .replace(/[\uff01-\uff5e\u2103\u2109]/g, (sign) => sign.normalize('NFKC'))
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, plainFraction)
    .replace(/(?!\d)\p{Nd}/gu, plainDigit)
    .replaceAll('\u066b', '.')
    .replace(/[\u2010-\u2013\u2212]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replaceAll('\u2236', ':')
    .replace(/[\u00ba\u02da]/g, '°')
    .replaceAll('\u2126', 'Ω')
    .replace(/\p{Zs}/gu, ' ')
    .trim();
}
