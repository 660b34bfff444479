package hobside.screen.prices;

import hobside.file.Limits;
import hobside.file.PriceFile;
import hobside.food.PriceList;
import hobside.measure.Currency;
import hobside.screen.Next;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Question;
import hobside.screen.ask.Question.Reply;
import hobside.screen.desk.Work;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The three questions before a new price list: where, when, and in which money. A copy keeps the money. */
final class NewList {

    private NewList() {}

    static Next ask(PricesScreen lists, Optional<PriceList> copied) {
        String first = copied.map(list -> list.heading().place()).orElse("");
        return Next.to(LineScreen.of(lists, new Question("Where are the prices taken?", "place", List.of("The shop or market, as people call it."), first,
                place -> place.isEmpty() || place.length() > Limits.NAME ? Reply.wrong("A list needs a place of at most " + Limits.NAME + " characters.")
                        : Reply.go(when(lists, place, copied)))));
    }

    private static Next when(PricesScreen lists, String place, Optional<PriceList> copied) {
        return Next.to(LineScreen.of(lists, new Question("On which day?", "day", List.of("As 2026-11-02. An empty line means today."), "", day -> {
            if (!day.isEmpty() && !isDay(day)) {
                return Reply.wrong("\"" + day + "\" is no day. Write year, month and day: 2026-11-02, or nothing for today.");
            }
            boolean invented = copied.map(list -> list.heading().invented()).orElse(false);
            PriceList.Heading heading = new PriceList.Heading(place, day, invented);
            return Reply.go(copied.isPresent() ? made(lists, copied.get().under(heading)) : money(lists, heading));
        })));
    }

    private static boolean isDay(String text) {
        try {
            return LocalDate.parse(text).toString().equals(text);
        } catch (DateTimeException noDay) {
            return false;
        }
    }

    private static Next money(PricesScreen lists, PriceList.Heading heading) {
        String first = lists.bench().desk().study().books().prices().currency().code();
        return Next.to(LineScreen.of(lists, new Question("In which money?", "code", List.of(
                "The three letters of ISO 4217: EUR, GBP, AUD, JPY ... XXX stands for no currency."), first, code -> {
                    Optional<Currency> currency = Currency.of(code.toUpperCase(Locale.ROOT));
                    return currency.map(known -> Reply.go(made(lists, PriceList.of(heading, known, List.of()))))
                            .orElseGet(() -> Reply.wrong("ISO 4217 has no currency \"" + code + "\". Write its three letters, such as EUR."));
                })));
    }

    private static Next made(PricesScreen lists, PriceList list) {
        return Next.doing(lists, new Work.PutPrices(PriceFile.fresh(list)));
    }
}
