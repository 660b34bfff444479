package hobside.ledger;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes shares add up to their whole to the last unit, in whatever order they are added.
 *
 * <p>The unit is the last bit of all shares taken together, signs left aside (a power of two, about 10⁻¹⁶ of them). On that grid
 * no sum of shares is ever rounded. What is missing of the whole goes to the largest share, where it is seen least; the first of
 * several.
 */
final class Rest {

    private Rest() {}

    /** The unit in which these shares and their whole are counted. */
    static double unit(List<FairShare> shares, double whole) {
        return Math.ulp(2 * Math.abs(whole) + 2 * shares.stream().mapToDouble(share -> Math.abs(share.share())).sum());
    }

    static double rounded(double figure, double unit) {
        return Math.rint(figure / unit) * unit;
    }

    static List<FairShare> spread(List<FairShare> shares, double whole) {
        double unit = unit(shares, whole);
        List<FairShare> even = new ArrayList<>();
        double missing = rounded(whole, unit);
        int largest = 0;
        for (int i = 0; i < shares.size(); i++) {
            even.add(shares.get(i).with(rounded(shares.get(i).share(), unit)));
            missing -= even.get(i).share();
            largest = Math.abs(even.get(i).share()) > Math.abs(even.get(largest).share()) ? i : largest;
        }
        if (!even.isEmpty()) {
            even.set(largest, even.get(largest).with(even.get(largest).share() + missing));
        }
        return List.copyOf(even);
    }
}
