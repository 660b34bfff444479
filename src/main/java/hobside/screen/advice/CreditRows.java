package hobside.screen.advice;

import hobside.dish.Change;
import hobside.dish.Titles;
import hobside.file.Study;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Credit;
import hobside.ledger.FairShare;
import hobside.ledger.Ledger;
import hobside.ledger.Step;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;

/** For each change that counts: what it saves as told, alone, last, and its fair share; grams of saturated fat a serve. */
record CreditRows(List<Row> rows, boolean exact) {

    /** One change; the error of its fair share is 0 when it was worked out exactly. */
    record Row(String title, double told, double alone, double last, FairShare fair) {}

    CreditRows {
        rows = List.copyOf(rows);
    }

    static CreditRows of(Demo demo, Study study) {
        Credit credit = Credit.of(demo.dish(), demo.plan(), study.books(), outcome -> outcome.of(Nutrient.FASAT, Basis.SERVE));
        List<FairShare> fair = credit.shares();
        List<Row> rows = new ArrayList<>();
        int index = 0;
        for (Step step : Ledger.of(demo.dish(), demo.plan(), study.books()).steps()) {
            if (step.planned().on()) {
                Change change = step.planned().change();
                double told = step.counts() ? step.told().saved(Nutrient.FASAT, Basis.SERVE).typical() : 0;
                rows.add(new Row(Titles.brief(change, demo.dish(), demo.plan()), told, credit.alone(change), credit.last(change), fair.get(index++)));
            }
        }
        return new CreditRows(rows, fair.stream().allMatch(FairShare::exact));
    }

    double whole() {
        return rows.stream().mapToDouble(row -> row.fair().share()).sum();
    }
}
