package hobside.guide;

import java.util.List;
import java.util.Optional;

/** Every published yardstick that has been read, each kind in the order of its file. */
public record GuideBook(
        List<EnergyFactors> energy, List<Guide> guides, List<Claim> claims, List<Band> bands, Cautions cautions) {

    public GuideBook {
        energy = Published.distinct(energy, EnergyFactors::published);
        guides = Published.distinct(guides, Guide::published);
        claims = Published.distinct(claims, Claim::published);
        bands = Published.distinct(bands, Band::published);
    }

    public Optional<EnergyFactors> energy(String key) {
        return energy.stream().filter(each -> each.published().key().equals(key)).findFirst();
    }

    public Optional<Guide> guide(String key) {
        return guides.stream().filter(each -> each.published().key().equals(key)).findFirst();
    }

    public Optional<Claim> claim(String key) {
        return claims.stream().filter(each -> each.published().key().equals(key)).findFirst();
    }

    /** All countries' rows for one claim, for solid and liquid food. */
    public List<Claim> claims(ClaimKind kind) {
        return claims.stream().filter(claim -> claim.kind() == kind).toList();
    }

    /** The rows of one claim that fit a dish: those for 100 g of what is solid, or 100 ml of what is liquid, and those per serve. */
    public List<Claim> claims(ClaimKind kind, Sample dish) {
        return claims(kind).stream().filter(claim -> dish.fits(claim.per())).toList();
    }

    /** The bands that fit a dish: one for each component, solid or liquid. */
    public List<Band> bands(Sample dish) {
        return bands.stream().filter(band -> dish.fits(band.per())).toList();
    }
}
