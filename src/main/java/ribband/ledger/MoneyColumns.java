package ribband.ledger;

/** Whether a sheet has the columns that hold money. */
public enum MoneyColumns {
  SHOWN,
  HIDDEN
}
