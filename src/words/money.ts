/** Money in a survey's currency; a bare number where it has none. */

const whole = new Intl.NumberFormat("en", { maximumFractionDigits: 0 });

/** $4,300, $2.85: whole from 20 on, since quotes are no finer. */
export function moneyIn(currency: string | null): (amount: number) => string {
  return (amount) => {
    const small = Math.abs(amount) < 20 && !Number.isInteger(amount);
    if (currency === null) return small ? amount.toFixed(2) : whole.format(amount);
    return inCurrency(currency, small ? 2 : 0)(amount);
  };
}

/** To the cent, for workings. */
export function exactMoneyIn(currency: string | null): (amount: number) => string {
  if (currency === null) return (amount) => amount.toFixed(2);
  return inCurrency(currency, 2);
}

/** Made once each: to make one takes longer than to write a hundred amounts. */
const made = new Map<string, Intl.NumberFormat>();

function inCurrency(currency: string, digits: number): (amount: number) => string {
  const key = `${currency} ${digits}`;
  let numbers = made.get(key);
  if (!numbers) {
    numbers = new Intl.NumberFormat("en", {
      style: "currency",
      currency,
      maximumFractionDigits: digits,
      minimumFractionDigits: digits,
    });
    made.set(key, numbers);
  }
  const { format } = numbers;
  // a true minus, and no minus nought
  return (amount) => format(Math.abs(amount) < 0.5 * 10 ** -digits ? 0 : amount).replace("-", "−");
}
