using System.Text.Json;
using StudioKit.Kits;
using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Tests.Checks;

public sealed class PlanChecksTests
{
    /// <summary>Invented kits that fail one check or another: a small panel, short stock, a light bag, a short hold, a flash in the ground.</summary>
    private static readonly Lazy<IReadOnlyList<PlanCheck>> Failing = new(() => [.. new[]
        {
            Kit("width: 120 mm\n  depth: 90 mm", "height: 500 mm"),
            Kit("width: 300 mm\n  depth: 300 mm", "height: 250 mm", distance: "30 cm"),
            Kit("width: 300 mm\n  depth: 300 mm", "height: 500 mm", pitch: "12°"),
            Kit("width: 300 mm\n  depth: 300 mm", "height: 500 mm", rest: """
                pack:
                  target-mass: 400 g
                  bags: [{name: pouch, inside: 200 mm x 100 mm x 60 mm, mass: 9 kg, carrier: Ilka, highest-load: 300 g}]
                  people: [{name: Ilka, body-mass: 20 kg}]
                session: {rounds: 40, frames: 20}
                """),
        }.SelectMany(plan => plan.Checks).Where(check => !check.Passed)]);

    [Fact]
    public void The_check_of_the_panel_holds_both_sides_and_what_to_cut_instead()
    {
        var check = Kit("width: 120 mm\n  depth: 90 mm", "height: 500 mm").Checks.Single(check => check.Kind == PlanCheckKind.PanelSize);

        check.Passed.Should().BeFalse();
        var (asked, given) = ((CheckAmount.TwoSides)check.Demand, (CheckAmount.TwoSides)check.Capacity);
        (given.Width.Millimeters, given.Depth.Millimeters).Should().Be((120, 90));
        check.Ratio.Should().Be(Math.Max(asked.Width.Millimeters / 120, asked.Depth.Millimeters / 90));
        check.Remedy!.Amount.Should().Be(asked);
        check.Remedy.Keys.Should().Contain(["panel.width", "panel.depth"]);
    }

    [Fact]
    public void The_kits_here_fail_many_kinds_of_checks() =>
        Failing.Value.Select(check => check.Kind).Distinct().Should().Contain([
            PlanCheckKind.PanelSize, PlanCheckKind.FlashBelow, PlanCheckKind.TargetMass, PlanCheckKind.Places, PlanCheckKind.BagMass,
            PlanCheckKind.Burden, PlanCheckKind.Cells]);

    [Fact]
    public void Whatever_fails_names_a_remedy_or_what_stands_in_the_way() =>
        Failing.Value.Should().OnlyContain(check => check.Remedy != null || check.Findings.Count > 0);

    [Fact]
    public void What_passes_has_no_remedy() =>
        KitText.Demo("fen-edge.yaml").Checks.Where(check => check.Passed).Should().OnlyContain(check => check.Remedy == null);

    /// <remarks>The schema that editors use is the reference: a path of sections, lists passed through.</remarks>
    [Fact]
    public void Every_key_that_a_remedy_names_is_a_key_of_the_kit()
    {
        using var schema = JsonDocument.Parse(KitSchema.Write());

        Failing.Value.Select(check => check.Remedy).OfType<CheckRemedy>().SelectMany(remedy => remedy.Keys).Distinct().Where(key => !IsKey(schema.RootElement, key)).Should().BeEmpty();
    }

    private static bool IsKey(JsonElement root, string path)
    {
        var at = root;
        foreach (var name in path.Split('.'))
        {
            if (Sections(root, at).Select(section => section.TryGetProperty(name, out var next) ? next : (JsonElement?)null).FirstOrDefault(next => next is not null) is not { } found)
            {
                return false;
            }

            at = found;
        }

        return true;
    }

    private static IEnumerable<JsonElement> Sections(JsonElement root, JsonElement at)
    {
        if (at.TryGetProperty("properties", out var properties))
        {
            yield return properties;
        }

        var inner = new[] { "anyOf", "oneOf", "allOf" }.Where(word => at.TryGetProperty(word, out _)).SelectMany(word => at.GetProperty(word).EnumerateArray())
            .Concat(at.TryGetProperty("items", out var items) ? [items] : [])
            .Concat(at.TryGetProperty("$ref", out var link) ? [root.GetProperty("$defs").GetProperty(link.GetString()!["#/$defs/".Length..])] : []);
        foreach (var properties2 in inner.SelectMany(element => Sections(root, element)))
        {
            yield return properties2;
        }
    }

    private static Plan Kit(string panel, string frame, string distance = "30 cm", string pitch = "60°", string rest = "") => KitText.Plan($$"""
        kit: Heath pool
        camera: {name: body R, sensor: 36 mm x 24 mm, pixels: 6000 x 4000}
        lenses:
          - {name: reed 50, focal-length: 50 mm, focusing: unit, aperture: f/2.8 to f/22, largest-magnification: 1:2, magnifications: [1:2]}
        flashes:
          - {name: sedge, guide-number: "30 m @ ISO 100", head: 70 mm x 40 mm, cell: aa-nimh-2000, mass: 300 g}
          - {name: willow, guide-number: "30 m @ ISO 100", head: 70 mm x 40 mm, cell: aa-nimh-2000, mass: 300 g}
        panel:
          {{panel}}
        frame:
          {{frame}}
          pipe: pvc-u-20x1.5
          fittings: pvc-u-20
        subjects:
          - {name: moth, group: flying-insects, length: 40 mm}
        set-ups:
          - name: white
            kind: white-background
            camera-pitch: {{pitch}}
            lights: [{flash: sedge, role: below, distance: {{distance}}}, {flash: willow, role: above, distance: 40 cm}]
        {{rest}}
        """);
}
