using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Cli.Usage;
using StudioKit.Kits.Quantities;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Placing;
using StudioKit.Sheets.Json;
using StudioKit.Wording;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit light</c>: the light on the panel, and where the flash below should go.</summary>
internal sealed class LightCommand
{
    private const string Text =
        """
        Shows the light on the panel of each white-background set-up: the white margin at the darkest and the brightest point that each
        framing sees, and a map of the whole panel. With --search it looks for the place of the flash that needs the least energy.

        Exit code 1 says that the geometry is impossible, that a framing's darkest point misses its target at every power or that no place serves every framing.

        Example: studiokit light kits/fen-edge.yaml --search
        """;

    private readonly CommandHost _host;
    private readonly Argument<string> _kit = KitInput.Argument();
    private readonly Option<string?> _setUp = new("--set-up") { Description = "One set-up only, by its name, e.g. white; all of them where left out.", HelpName = "name" };
    private readonly Option<bool> _search = new("--search") { Description = "Search position, aim, zoom, modifier, skirts, panel height and one or two flashes." };
    private readonly Option<bool> _json = JsonOption.Create();

    private LightCommand(CommandHost host) => _host = host;

    public static Command Create(CommandHost host)
    {
        var light = new LightCommand(host);
        var command = new Command("light", Text) { light._kit, light._setUp, light._search, light._json };

        // On a thread of its own, so that an interrupt reaches the search while it runs.
        command.SetAction((parsed, cancellation) => Task.Run(() => (int)light.Run(parsed, cancellation), cancellation));
        return command;
    }

    private ExitCode Run(ParseResult parsed, CancellationToken cancellation)
    {
        var read = KitInput.Read(parsed.GetRequiredValue(_kit), _host);
        if (read.HasErrors)
        {
            return ExitCode.BadInput;
        }

        var plan = Planner.Plan(read);
        var lights = Chosen(plan, parsed.GetValue(_setUp));
        if (lights is null)
        {
            return ExitCode.BadInput;
        }

        var placements = parsed.GetValue(_search)
            ? lights.Where(light => light.Upright is null).Select(light => PlacementPlanner.Search(plan, light.SetUp, new PlacementProgressLine(_host), cancellation)).OfType<PlacementPlan>().ToList()
            : [];
        Print(plan, lights, placements, parsed.GetValue(_json));
        return Verdict(lights, placements);
    }

    private List<PanelLightPlan>? Chosen(Plan plan, string? setUp)
    {
        var chosen = plan.SheetLights.Where(light => setUp is null || light.SetUp == setUp).ToList();
        if (chosen.Count > 0)
        {
            return chosen;
        }

        var names = string.Join(", ", plan.SheetLights.Select(light => $"'{light.SetUp}'").Distinct(StringComparer.Ordinal));
        var meant = NearestName.Of(setUp ?? "", plan.SheetLights.Select(light => light.SetUp)) is { } nearest ? $" Did you mean '{nearest}'?" : "";
        _host.Report(UsageCodes.Refused, names.Length == 0
            ? "the kit has no white-background set-up."
            : $"--set-up: no white-background set-up is named '{setUp}'.{meant} There is {names}.");
        return null;
    }

    private void Print(Plan plan, List<PanelLightPlan> lights, List<PlacementPlan> placements, bool asJson)
    {
        if (asJson)
        {
            _host.Output.WriteLine(JsonReport.Document(json => json
                .Text("kit", plan.Kit.Name)
                .Text("contentHash", plan.ContentHash)
                .List("panelLights", lights, light => PanelLightJson.Write(json, light, withGrids: true))
                .List("placements", placements, placement => PanelLightJson.Write(json, placement))));
            return;
        }

        foreach (var light in lights)
        {
            PanelLightTables.Write(plan, light, _host);
        }

        foreach (var placement in placements)
        {
            PlacementTables.Write(placement, _host);
        }
    }

    private ExitCode Verdict(List<PanelLightPlan> lights, List<PlacementPlan> placements)
    {
        var faults = lights.SelectMany(light => LightProblemText.Of(light).Concat(light.Framings.Where(framing => !framing.IsUsable).Select(framing =>
            $"{framing.Framing}: the exposure does not work; 'plan --why' says what stands in the way.")).Select(problem => $"{light.SetUp}: {problem}"))
            .ToList();
        foreach (var fault in faults)
        {
            _host.Error.WriteLine($"check fails: {fault}");
        }

        return faults.Count == 0 && placements.All(placement => placement.Recommended is not null) ? ExitCode.Done : ExitCode.PlanFails;
    }
}
