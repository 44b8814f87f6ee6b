/** Words of formulas: why one has no value here. Each stands after a colon, within a sentence. */
const en = {
  tooLarge: 'the result is too large to work with',
  inside: (problem: string) => `${problem} for some values inside the stated uncertainty`,
  byZero: 'this divides by zero',
  rootOfNegative: 'a negative number cannot be raised to a fraction',
  baseNotPositive: 'the base of a power must be above zero',
  steepPower: 'this power has no finite slope here',
  steep: (name: string) => `${name} has no finite slope here`,
  unknown: (name: string) => `${name} is not known`,
  missing: 'a value is missing',
  needs: {
    sqrt: 'sqrt needs a number that is not negative',
    ln: 'ln needs a number above zero',
    tan: 'tan needs an angle other than 90°',
    asin: 'asin needs a number between −1 and 1',
    acos: 'acos needs a number between −1 and 1',
  },
};

export default en;
