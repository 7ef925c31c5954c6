using System.Text.Json;
using StudioKit.Kits;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Tests.Plans;

namespace StudioKit.Planning.Tests.Checks;

/// <summary>A failing check names the keys of the kit that mend it, and what stands there now.</summary>
public sealed class CheckKeysTests
{
    private static readonly JsonElement Schema = JsonDocument.Parse(KitSchema.Write()).RootElement;

    [Fact]
    public void Every_failing_check_of_any_kit_names_a_key_that_kits_have() => RandomKits.Any.Sample(kit =>
    {
        var plan = KitPlanner.Plan(new KitReadResult(kit, [], [], new()));
        foreach (var check in plan.Checks.Where(check => !check.Passed))
        {
            var keys = CheckKeys.Of(check, plan);
            keys.Should().NotBeEmpty($"{check.Kind} fails");
            keys.Should().OnlyContain(key => IsKey(key.Path), $"{check.Kind} fails");
        }
    }, iter: 15, threads: 1);

    [Fact]
    public void A_panel_that_is_too_small_names_its_sides_as_the_kit_has_them()
    {
        var plan = KitText.Plan(KitText.Bare + """
            panel: {width: 60 mm, depth: 5 cm}
            flashes:
              - {name: low, guide-number: 30 m}
            set-ups:
              - {name: black, kind: dark-background, camera-pitch: 10°, lights: [{flash: low, role: key, distance: 45 cm}]}
              - {name: white, kind: white-background, camera-pitch: [60°, 90°], lights: [{flash: low, role: below, distance: 45 cm}]}
            """);

        var keys = CheckKeys.Of(plan.Checks.Single(check => check.Kind == PlanCheckKind.PanelSize), plan);

        keys.Should().Contain(new KitKey("panel.width", "60 mm")).And.Contain(new KitKey("panel.depth", "5 cm")).And.Contain(new KitKey("set-ups[1].camera-pitch", "60°, 90°"));
        keys.Should().NotContain(key => key.Path == "set-ups[0].camera-pitch", "it does not stand on the panel");
    }

    [Fact]
    public void A_key_that_is_left_out_is_named_with_what_was_taken_for_it()
    {
        var plan = KitText.Plan(KitText.Bare + """
            site: {wind: Beaufort 9}
            flashes:
              - {name: low, guide-number: 30 m}
            set-ups:
              - {name: white, kind: white-background, lights: [{flash: low, role: below, distance: 45 cm}]}
            """);

        plan.Checks.Where(check => !check.Passed).SelectMany(check => CheckKeys.Of(check, plan)).Should().Contain(key => key.Value == null && key.Standing != null);
    }

    // Walks the schema that editors use, which knows nothing of checks.
    private static bool IsKey(string path)
    {
        var at = Schema;
        foreach (var step in path.Split('.').Select(step => step.Split('[')[0]))
        {
            if (!Section(at).TryGetProperty("properties", out var properties) || !properties.TryGetProperty(step, out at))
            {
                return false;
            }
        }

        return true;
    }

    private static JsonElement Section(JsonElement element) =>
        element.TryGetProperty("items", out var items) ? Section(items)
        : element.TryGetProperty("anyOf", out var choices) && !element.TryGetProperty("properties", out _) ? Section(choices.EnumerateArray().Last())
        : element.TryGetProperty("$ref", out var reference) ? Schema.GetProperty("$defs").GetProperty(reference.GetString()!["#/$defs/".Length..])
        : element;
}
