using StudioKit.Kits;
using StudioKit.Kits.Cards;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Cards;

/// <summary>No card leaves its reader without where the lights stand, and one with a cover tells where a flash shows in it.</summary>
public sealed class PlacedLightsTests
{
    private static readonly ExposurePlan White = SamplePlan.White(SamplePlan.Framing("55 mm at 1:1", 1));

    // A ball's wall turned half way between lamp and lens throws one to the other: from the right it shows right of the middle, at three.
    private static readonly Plan Domed = KitPlanner.Plan(KitReader.Parse(
        """
        kit: Cottongrass mire
        camera: {name: body, sensor: 36 mm x 24 mm, flash-sync: 1/200 s, iso: 100 to 6400}
        lenses: [{name: rush 60, focal-length: 60 mm, aperture: f/2.8 to f/32, largest-magnification: 1:1, magnifications: [1:2]}]
        flashes: [{name: one, guide-number: "32 m @ ISO 100, 35 mm", head: 10 mm x 10 mm}]
        covers: [{name: dome, shape: dome, inside: 120 mm x 120 mm x 60 mm}]
        site: {ground-reflectance: 0, outdoor-correction: 0 stops, hand-speed: 0 m/s}
        set-ups:
          - name: black
            kind: dark-background
            cover: dome
            aperture: f/16
            shutter: 1/200 s
            iso: 400
            camera-pitch: 90°
            lights: [{flash: one, role: key, distance: 40 cm, azimuth: 90°, elevation: 45°}]
        """,
        "kit.yaml",
        PartsLibrary.Embedded));

    public static TheoryData<string> Templates { get; } = [.. CardTemplates.Names];

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_card_says_from_where_its_light_comes_or_which_sheet_does(string template)
    {
        var stand = SampleStand.Of(new LightDirection(Angle.FromDegrees(-90), Angle.FromDegrees(45)), 40);

        var text = Text(Made(White, template, [stand]));

        (text.Contains("9 o'clock, 45° up", StringComparison.Ordinal) || text.Contains("Where the lights stand: on the plan report", StringComparison.Ordinal)).Should().BeTrue(text);
    }

    [Fact]
    public void The_smallest_back_has_words_where_it_has_no_room_to_draw()
    {
        var stand = SampleStand.Of(new LightDirection(Angle.FromDegrees(-90), Angle.FromDegrees(45)), 40);

        Text(Made(White, "ID-1", [stand]).Back!).Should().Contain("Above: 40 cm, 9 o'clock, 45° up");
    }

    [Theory]
    [InlineData("A6")]
    [InlineData("4x6in")]
    [InlineData("3x5in")]
    [InlineData("A7")]
    public void A_card_with_a_cover_says_where_a_flash_shows_in_it(string template)
    {
        var shown = Domed.Covers.Single().Framings.Single().Views.Single().Shown.Should().ContainSingle().Which;
        shown.Hour.Should().BeApproximately(3, 0.5);
        shown.TowardsEdge.Should().BeInRange(0, 1);

        Text(Made(Domed.Exposures.Single(), template, [], Domed)).Should().Contain("At 90° the one shows in the round wall").And.Contain("3 o'clock");
    }

    private static Card Made(ExposurePlan exposure, string template, IReadOnlyList<LightStandPlan> stands, Plan? plan = null) => ExposureCard.Make(
        exposure, SamplePlan.Advice(exposure), CardTemplates.Of(template), Pages.Stamp, new CardPlace(7, 18), cover: plan?.Covers.Single(), stands: stands).Card;

    private static string Text(Card card) => string.Join(' ', new[] { card.Front, card.Back }.OfType<Drawing>().Select(Text));

    private static string Text(Drawing drawing) => string.Join(' ', drawing.Marks.OfType<Label>().Select(label => label.Text));
}
