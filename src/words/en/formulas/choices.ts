import { type Formula, f, ours } from "./formula.ts";

const shapley = "Shapley (1953), Contributions to the Theory of Games II: 307–317";
const drawnOrders = "Castro, Gómez and Tejada (2009), Computers and Operations Research 36: 1726–1730";
const lifeCycle = "Fuller and Petersen (1996), NIST Handbook 135";
const points = "Hyndman and Fan (1996), American Statistician 50:361–365, type 7";
const wherry = "Wherry (1931), Annals of Mathematical Statistics 2:440–457";

/** Formulas of measures, sets, money, sizes and draws. */
export const choicesFormulas = {
  setSaved: f("setSaved", "{asToday} − {withSet}", "as watered today, less with the set done", ours),
  adds: f("adds", "{savedWith} − {savedWithout}", "the set with it, less the set without it", ours),
  addsMoney: f("addsMoney", "{moneyWith} − {moneyWithout}", "the set with it, less the set without it", ours),
  placeMean: f("placeMean", "{adds} ÷ {setsCount}", "every set of so many others counts alike", shapley),
  placeMoney: f(
    "placeMoney",
    "{addsMoney} ÷ {setsCount}",
    "every set of so many others counts alike",
    shapley,
  ),
  memberShare: f(
    "memberShare",
    "{placeMean} ÷ {membersCount}",
    "it is as likely to come at any place",
    shapley,
  ),
  memberMoney: f(
    "memberMoney",
    "{placeMoney} ÷ {membersCount}",
    "it is as likely to come at any place",
    shapley,
  ),
  drawnShare: f(
    "memberShare",
    "{adds} ÷ {orders}",
    "mean of what it adds, over the orders drawn",
    drawnOrders,
  ),
  drawnMoney: f(
    "memberMoney",
    "{addsMoney} ÷ {orders}",
    "mean of what it adds, over the orders drawn",
    drawnOrders,
  ),
  standardError: f("standardError", "{deviation} ÷ √({orders})", "how far the share may be off", drawnOrders),

  moneySaved: f(
    "moneySaved",
    "{billBefore} − {billAfter}",
    "the whole bill before, less the whole bill after",
    ours,
  ),
  periodsAlike: f(
    "yearBill",
    "{periods} × {periodBill}",
    "the year’s use is spread evenly over its periods",
    ours,
  ),
  useKL: f("useKL", "{mainsKL} + {otherKL}", "all that is on the bill of the period", ours),
  useAlike: f("useKL", "({mainsKL} + {otherKL}) ÷ {periods}", "the year’s use is spread evenly", ours),
  stepCost: f(
    "stepCost",
    "max(0, min({useKL}, {stepTo}) − {stepFrom}) × {stepPrice}",
    "what lies in the step, at its price",
    "common practice of rising tariffs",
  ),
  lastStep: f(
    "stepCost",
    "max(0, {useKL} − {stepFrom}) × {stepPrice}",
    "what lies above, at the last price",
    "common practice of rising tariffs",
  ),
  alsoCost: f("alsoCost", "{useKL} × {alsoPrice}", "they follow every kL", "common practice of tariffs"),
  topPrice: f("topPrice", "{stepPrice} + {alsoPrice}", "a saving comes off the dearest step first", ours),

  shortKL: f("shortKL", "{lacking} ÷ 1000", "1,000 L are 1 kL", ours),
  heldBack: f("withSet", "{withNeed} − {heldBack}", "no bed more than today", ours),

  capital: f("capital", "max(0, {quoted} − {grant})", "a grant never pays more than the quote", ours),
  firstFlow: f("yearsFlow", "−{capital}", "paid on day one", lifeCycle),
  yearFlow: f(
    "yearsFlow",
    "{moneySaved} × (1 + {rise})^({yearNumber} − 1) − {upkeep} − {again}",
    "the saving grows with the price of water; upkeep and worn parts come off",
    lifeCycle,
  ),
  present: f("present", "{yearsFlow} ÷ (1 + {discount})^{yearNumber}", "money later counts less", lifeCycle),
  npvAdds: f("npv", "{npvWith} − {npvWithout}", "the set with it, less the set without it", ours),
  payback: f("payback", "{capital} ÷ ({moneySaved} − {upkeep})", "without a rise or a discount", lifeCycle),
  discountedPayback: f(
    "payback",
    "{yearNumber} − 1 + {leftToPay} ÷ {present}",
    "the part of that year in which the rest is paid",
    lifeCycle,
  ),
  recovery: f(
    "recovery",
    "{discount} ÷ (1 − (1 + {discount})^(−{life}))",
    "uniform capital recovery factor",
    lifeCycle,
  ),
  recoveryAtNone: f("recovery", "1 ÷ {life}", "without a discount the same each year", lifeCycle),
  lineYearly: f("yearlyCost", "{lineCost} × {recovery}", "the price spread over its own life", lifeCycle),
  grantYearly: f("yearlyGrant", "{lineCost} × {recovery}", "spread over the longest life", lifeCycle),
  worthAlone: f(
    "breakEvenQuote",
    "{moneySaved} × {presentOne}",
    "what the saving is worth over the years, upkeep left out",
    lifeCycle,
  ),
  costPerKL: f("costPerKL", "{yearlyCost} ÷ {savedKL}", "yearly cost over yearly saving", lifeCycle),
  yearlyAll: f(
    "yearlyCost",
    "max(0, {yearlyLines} − {yearlyGrant}) + {upkeep}",
    "the lines a year, the grant a year off, upkeep on top",
    lifeCycle,
  ),
  breakEvenPrice: f(
    "breakEvenPrice",
    "{presentCost} ÷ ({savedKL} × {presentOne})",
    "the price at which what is saved is worth what is paid",
    lifeCycle,
  ),
  breakEvenQuote: f(
    "breakEvenQuote",
    "{quoted} × ({moneySaved} × {presentOne} − {presentUpkeep} + {grant}) ÷ {presentLines}",
    "all lines dearer in proportion, until nothing is left",
    lifeCycle,
  ),
  paidFor: f(
    "paidFor",
    "{spent} ÷ {yearBudget}",
    "rounded up to whole years: the year in which it is done",
    ours,
  ),

  sizeSaved: f("sizeSaved", "{withoutTank} − {withTank}", "the same run twice, without it and with it", ours),
  marginal: f(
    "marginal",
    "({savedNext} − {sizeSaved}) ÷ ({sizeNext} − {sizeNow}) × 1000",
    "how much steeper the next step is",
    ours,
  ),
  emptyYear: f("emptyYear", "{emptyCount} ÷ {recordDays} × 365.25", "a year has 365.25 days"),
  stressYear: f("stressYear", "{stressDays} ÷ {recordDays} × 365.25", "a year has 365.25 days", ours),
  longestDry: f("longestDry", "{dryDays}", "a fortnight is taken to be lived through: a rule of ours", ours),
  discountIs: f("discount", "{discount}", "what money could earn otherwise, inflation taken off", lifeCycle),
  riseIs: f("rise", "{rise}", "the price a year later is so much more, inflation taken off", lifeCycle),
  aheadIs: f("ahead", "{ahead}", "what comes later is left out", lifeCycle),
  leastYear: f(
    "giveUp",
    "{todayKL} − {planKL}",
    "as watered today, less the plan with no bed more than today",
    ours,
  ),
  moreSaved: f("moreSaved", "{savedMore} − {sizeSaved}", "the same run with a quarter more of it", ours),
  partOfAll: f("partOfAll", "{sizeSaved} ÷ {mostSaved}", "95% of it is called enough", ours),

  placeDrawn: f("order", "{point} × ({drawn} − 1)", "the figures in order, the least first", points),
  pointKL: f(
    "pointKL",
    "{below} + ({order} − {placeBelow}) × ({above} − {below})",
    "on a straight line between two figures",
    points,
  ),
  pointMoney: f(
    "pointMoney",
    "{belowMoney} + ({order} − {placeBelow}) × ({aboveMoney} − {belowMoney})",
    "on a straight line between two figures",
    points,
  ),
  chance: f("chance", "({wins} + {ties} ÷ 2) ÷ {draws}", "half of the ties count for each", ours),
  widthShare: f(
    "widthShare",
    "{betweenDraws} ÷ ({within} + {betweenDraws}) × {explained}",
    "what of the whole variance goes with it",
    wherry,
  ),
  widthOfYears: f("widthShare", "{within} ÷ ({within} + {betweenDraws})", "what of it the years make", ours),
} satisfies Record<string, Formula>;
