package hobside.ledger;

import hobside.food.Cookery;
import hobside.food.PriceList;

/** What a ledger is reckoned with besides dish and plan: what the kitchen knows, and what things cost. */
public record Books(Cookery cookery, PriceList prices) {}
