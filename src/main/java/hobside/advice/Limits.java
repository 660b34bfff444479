package hobside.advice;

import hobside.dish.Change;
import hobside.dish.ChangeKind;
import java.util.EnumSet;
import java.util.Set;

/**
 * What must stay and how far advice may go. Everything is reckoned from the plan as it stands.
 *
 * @param keep ids of ingredients that stay what they are: no other food, not left out; handled better or used less is fine
 * @param untouched ids of ingredients that are not changed at all; a skimmed pot still counts as fine
 * @param mostChanges how many more changes; 0 means any number
 * @param mostExtraCost extra minor coins a serve; NaN means any
 * @param mostMinutes extra minutes of work; -1 means any
 * @param taste how far from the dish: 0 only handles the same food better, 1 also other foods and less of one, 2 also
 *     leaves out and puts another food in place of what the dish is made of, 3 anything
 * @param newAllergens whether a food may bring an allergen that the dish does not hold yet
 * @param mostWater millilitres of water stirred into all thinned foods together; NaN means any
 * @param leastMeat grams of raw meat, poultry or fish a serve, edible, before trimming; NaN means any. A dish that holds less
 *     already must not lose any of it.
 * @param sharing whether more people, a smaller serve and a filling may be used
 */
public record Limits(Set<String> keep, Set<String> untouched, int mostChanges, double mostExtraCost, int mostMinutes, int taste,
        boolean newAllergens, double mostWater, double leastMeat, boolean sharing) {

    /** The usual: other foods and less of one, but nothing left out, no new allergen, and serves as they are. */
    public static final Limits NONE =
            new Limits(Set.of(), Set.of(), 0, Double.NaN, -1, 1, false, Double.NaN, Double.NaN, false);

    private static final Set<ChangeKind> IN_KIND = EnumSet.of(ChangeKind.SWAP, ChangeKind.LEAVE_OUT);

    private static final Set<ChangeKind> SHARING = EnumSet.of(ChangeKind.BULK_OUT, ChangeKind.SMALLER_SERVE, ChangeKind.MORE_PEOPLE);

    public Limits {
        keep = Set.copyOf(keep);
        untouched = Set.copyOf(untouched);
        if (taste < 0 || taste > 3 || mostChanges < 0) {
            throw new IllegalArgumentException("taste " + taste + ", changes " + mostChanges);
        }
    }

    /** Whether a change may be looked at, whatever else is done with it. */
    boolean allow(Change change) {
        boolean stays = keep.contains(change.of()) && IN_KIND.contains(change.kind());
        boolean shared = SHARING.contains(change.kind()) && !sharing;
        return !stays && !shared && !untouched.contains(change.of()) && Offers.departure(change.kind()) <= taste;
    }

    /** Whether a wish keeps on its own what can be told of it alone: its kind, its minutes, its water, and that its cost is known. */
    boolean allow(Wish wish) {
        boolean quick = mostMinutes < 0 || wish.minutes() <= mostMinutes;
        boolean dry = Double.isNaN(mostWater) || wish.water() <= mostWater;
        boolean known = Double.isNaN(mostExtraCost) || wish.priced();
        return allow(wish.change()) && wish.departure() <= taste && quick && dry && known;
    }

    public Limits withTaste(int other) {
        return new Limits(keep, untouched, mostChanges, mostExtraCost, mostMinutes, other, newAllergens, mostWater, leastMeat, sharing);
    }

    /** With other ingredients that must stay, and others that are not touched. */
    public Limits keeping(Set<String> stay, Set<String> alone) {
        return new Limits(stay, alone, mostChanges, mostExtraCost, mostMinutes, taste, newAllergens, mostWater, leastMeat, sharing);
    }

    public Limits withMostChanges(int other) {
        return new Limits(keep, untouched, other, mostExtraCost, mostMinutes, taste, newAllergens, mostWater, leastMeat, sharing);
    }

    public Limits withMostExtraCost(double other) {
        return new Limits(keep, untouched, mostChanges, other, mostMinutes, taste, newAllergens, mostWater, leastMeat, sharing);
    }

    public Limits withMostMinutes(int other) {
        return new Limits(keep, untouched, mostChanges, mostExtraCost, other, taste, newAllergens, mostWater, leastMeat, sharing);
    }

    public Limits withNewAllergens(boolean other) {
        return new Limits(keep, untouched, mostChanges, mostExtraCost, mostMinutes, taste, other, mostWater, leastMeat, sharing);
    }

    public Limits withMostWater(double other) {
        return new Limits(keep, untouched, mostChanges, mostExtraCost, mostMinutes, taste, newAllergens, other, leastMeat, sharing);
    }

    public Limits withLeastMeat(double other) {
        return new Limits(keep, untouched, mostChanges, mostExtraCost, mostMinutes, taste, newAllergens, mostWater, other, sharing);
    }

    public Limits withSharing(boolean other) {
        return new Limits(keep, untouched, mostChanges, mostExtraCost, mostMinutes, taste, newAllergens, mostWater, leastMeat, other);
    }
}
