using System.Globalization;
using StudioKit.Kits;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Measured light distributions against the same beams by their formulas, which the file's table follows degree by degree.</summary>
public sealed class LightDistributionTests
{
    // Straight lines between rows a degree apart fall short of a smooth curve by at most 1/8 of its second difference: under 1e-4 of the axis here.
    private const double TableStops = 0.003;

    /// <summary>A beam half as bright 60° off its axis falls as the cosine.</summary>
    [Fact]
    public void A_file_of_a_cosine_beam_lights_the_panel_as_the_beam_itself()
    {
        var (file, formula) = (Planned("light-distribution: cosine.ies"), Planned("beam-width: 120°, beam-height: 120°"));

        Figures(file).Should().Equal(Figures(formula), (one, other) => Math.Abs(one - other) < TableStops);
        Figures(file).Zip(Figures(Planned(""))).Should().Contain(pair => Math.Abs(pair.First - pair.Second) > 0.1, "the zoom's own beam is narrower");
    }

    /// <summary>A half ball gives I₀(1 + cos θ)/2 all round: shape and loss follow from the table as from the formula.</summary>
    [Fact]
    public void A_file_of_a_half_ball_loses_and_lights_as_the_half_ball_does()
    {
        var (file, formula) = (Planned("", "light-distribution: ball"), Planned("", "half-ball: yes"));

        file.Exposures[0].Lights[0].Budget.Total.Value.Should().BeApproximately(formula.Exposures[0].Lights[0].Budget.Total.Value, TableStops);
        Figures(file).Should().Equal(Figures(formula), (one, other) => Math.Abs(one - other) < TableStops);
    }

    // Seven decimals in the file.
    /// <summary>The guide number alone says how bright the axis is, so that another scale of the same table changes nothing.</summary>
    [Fact]
    public void Candelas_only_count_relative_to_the_axis() => Figures(Planned("light-distribution: cosine.ies")).Should().Equal(Figures(Planned("light-distribution: bright.ies")), (one, other) => Math.Abs(one - other) < 1e-6);

    /// <summary>Another zoom is another beam: the file keeps to the zoom of its flash, and the plan says so.</summary>
    [Fact]
    public void At_another_zoom_than_the_files_the_beam_follows_from_the_zoom()
    {
        var file = Planned("light-distribution: cosine.ies", light: ", zoom: 50 mm");

        Figures(file).Should().Equal(Figures(Planned("", light: ", zoom: 50 mm")));
        file.Exposures[0].Caveats.Should().Contain(caveat => caveat.Contains("cosine.ies", StringComparison.Ordinal));
        file.Exposures[0].Lights[0].Beam.Should().BeNull();
        Planned("light-distribution: cosine.ies", light: ", zoom: 35 mm").Exposures[0].Lights[0].Beam!.BeamWidth.Degrees.Should().BeApproximately(120, 0.01);
    }

    private static IEnumerable<double> Figures(Plan plan) => plan.PanelLights[0].Framings
        .SelectMany(framing => new[] { framing.Spread.Value, framing.Darkest.Margin.Value, framing.Brightest.Margin.Value });

    private static Plan Planned(string flash, string? modifier = null, string light = "") => KitPlanner.Plan(KitReader.Parse(
        $$"""
        kit: Measured beams
        camera: {name: body, sensor: 36 mm x 24 mm, iso: 100 to 6400}
        lenses: [{name: reed 60, focal-length: 60 mm, magnifications: [1:10]}]
        flashes: [{name: sedge, guide-number: "40 m @ ISO 100, 35 mm"{{More(flash)}}}]
        modifiers: [{name: ball, kind: dome, size: 5 mm x 5 mm{{More(modifier ?? "")}}}]
        panel: {width: 600 mm, depth: 500 mm, skirts: no, underside-reflectance: 0}
        site: {ground-reflectance: 0}
        set-ups:
          - name: white
            kind: white-background
            aperture: f/8
            iso: 400
            camera-pitch: 90°
            lights: [{flash: sedge, role: below, distance: 300 mm{{light}}{{(modifier is null ? "" : ", modifier: ball")}}}]
        """,
        "kit.yaml",
        PartsLibrary.FromTexts(new Dictionary<string, string>
        {
            ["light-distributions/cosine"] = File(1, 90, Math.Cos),
            ["light-distributions/bright"] = File(1000, 90, Math.Cos),
            ["light-distributions/ball"] = File(1, 180, angle => (1 + Math.Cos(angle)) / 2),
        })));

    private static string More(string keys) => keys.Length == 0 ? "" : ", " + keys;

    private static string File(double axial, int last, Func<double, double> relative) => string.Create(CultureInfo.InvariantCulture, $"""
        IESNA:LM-63-2002
        TILT=NONE
        1 -1 1 {last + 1} 1 1 2 0 0 0
        1 1 1
        {string.Join(' ', Enumerable.Range(0, last + 1))}
        0
        {string.Join(' ', Enumerable.Range(0, last + 1).Select(degree => (axial * Math.Max(0, relative(degree * Math.PI / 180))).ToString("0.0000000", CultureInfo.InvariantCulture)))}
        """);
}
