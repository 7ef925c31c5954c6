using StudioKit.Planning.Changes;
using StudioKit.Planning.Tests.ByHand;

namespace StudioKit.Planning.Tests.Advising;

/// <summary>Whatever would make an exposure work lies on the lens, the camera and the flash, and in the bag.</summary>
public sealed class WithinTheBagTests
{
    private const string Filters = "accessories: {filters: [{name: grey three, kind: neutral-density, loss: 3 stops}, {name: grey six, kind: neutral-density, loss: 6 stops}]}\n";

    private const string Habitat =
        """
        set-ups:
          - {name: day, kind: daylight-fill, aperture: f/8, shutter: 1/200 s, ambient: EV 15, background-distance: 3 m, lights: [{flash: one, role: fill, distance: 50 cm}]}

        """;

    // In bright sun f/22 is not enough to keep daylight three stops under the flash at the sync speed; f/51 would be, which no lens has.
    [Fact]
    public void A_lens_that_ends_at_f_22_is_never_stopped_down_further()
    {
        var plan = KitText.Plan(HandKit.Of(HandKit.White.Replace("camera-pitch", "ambient: EV 16\n    camera-pitch", StringComparison.Ordinal), panel: "width: 400 mm, depth: 400 mm")
            .Replace("f/2.8 to f/32", "f/2.8 to f/22", StringComparison.Ordinal));
        var exposure = plan.Exposures.Single();

        exposure.Verdict.Verdict.Should().NotBe(Verdict.Works);
        var mending = plan.Advice.Of(exposure).Mending;
        mending.Should().NotBeEmpty("shade mends it");
        mending.Should().OnlyContain(change => change.Promise.Aperture.Value <= 22.7 && change.Promise.Iso.Value >= 99 && change.Promise.Filter == null);
    }

    // EV 15 at ISO 100 and 1/200 s asks for log₂(64·200) = 13.6 and the close-up's 1.2 stops at f/8: about ⅕ stop too bright for f/8, 1.2 for a lens that ends at f/5.6.
    [Fact]
    public void No_filter_is_named_that_the_bag_does_not_hold()
    {
        var plan = Bright("");

        plan.Exposures.Single().Verdict.Verdict.Should().Be(Verdict.DoesNotWork);
        plan.Advice.Of(plan.Exposures.Single()).Mending.SelectMany(change => change.Changes).OfType<KitChange.Before>().Should().BeEmpty();
    }

    [Fact]
    public void The_weakest_neutral_density_filter_of_the_bag_that_will_do_is_named()
    {
        var plan = Bright(Filters);

        var mending = plan.Advice.Of(plan.Exposures.Single()).Mending;
        mending.SelectMany(change => change.Changes).OfType<KitChange.Before>().Select(change => change.Filter).Should().Equal("grey three");
        mending.Single(change => change.Promise.Filter is not null).Promise.Verdict.Verdict.Should().Be(Verdict.Works);
        mending.SelectMany(change => change.Changes).Select(change => change.Key).Should().Contain("set-ups.filter", "who doubts it can write it into the kit");
    }

    private static Plan Bright(string filters) => KitText.Plan(HandKit.Of(filters + Habitat)
        .Replace("f/2.8 to f/32", "f/2.8 to f/5.6", StringComparison.Ordinal));
}
