/** Days of a mean year, leap years counted in: ages and yearly rates are told in these. */
export const DAYS_PER_YEAR = 365.25;

/** Days of a mean month, a twelfth of that year. */
export const DAYS_PER_MONTH = DAYS_PER_YEAR / 12;
