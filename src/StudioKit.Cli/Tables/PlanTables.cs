using Spectre.Console;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>A plan as tables on a terminal.</summary>
internal static class PlanTables
{
    public static void Write(Plan plan, CommandHost host)
    {
        var console = TableConsole.For(host);
        console.WriteLine($"{plan.Kit.Name}   (content {plan.ContentHash})");
        console.WriteLine(StudioVerdictText.Of(StudioVerdict.Of(plan)));
        WriteCorrections(console, plan.Corrections);
        WritePanel(console, plan.Panel);
        WriteFramings(console, plan.Framings);
        var said = new HashSet<string>(StringComparer.Ordinal);
        foreach (var setUp in plan.Exposures.GroupBy(exposure => exposure.SetUp))
        {
            WriteSetUp(console, setUp.Key, [.. setUp], plan.Advice, said);
            StandTables.Write(console, setUp.Key, [.. plan.LightStands.Where(stand => stand.SetUp == setUp.Key)]);
        }

        if (plan.Workshop is { } workshop)
        {
            FrameTables.Write(console, plan.Frame, workshop);
        }

        WritePack(console, plan.Pack);
        if (plan.Session is { } session)
        {
            SessionTable.Write(console, session);
        }

        if (plan.Day is { } day)
        {
            DayTable.Write(console, day);
        }

        WriteChecks(console, plan);
        WriteDefaults(console, plan.Defaults);
    }

    private static void WriteCorrections(IAnsiConsole console, MeasuredCorrections? corrections)
    {
        if (corrections is not null)
        {
            var table = TableConsole.Table(FormattableString.Invariant($"Measured corrections of {corrections.Date:yyyy-MM-dd}"), "", "");
            foreach (var value in corrections.Values)
            {
                table.AddRow(Markup.Escape(value.Quantity), Markup.Escape(CorrectionText.Value(value)));
            }

            console.Write(table);
        }
    }

    private static void WritePanel(IAnsiConsole console, PanelPlan panel)
    {
        var table = TableConsole.Table("Panel", "", "");
        table.AddRow("material", Markup.Escape($"{panel.Material}, {PlanFormat.Millimetres(panel.Thickness)}"));
        table.AddRow(panel.SizeGiven ? "size in the kit" : "size to cut", PlanFormat.Rectangle(panel.Width, panel.Depth));
        table.AddRow("size needed", PlanFormat.Rectangle(panel.RequiredWidth, panel.RequiredDepth));
        if (panel.LargestFraming is { } framing && panel.LargestPitch is { } pitch)
        {
            table.AddRow("set by", Markup.Escape($"{framing}, camera {MeasureFormat.Degrees(pitch)} under the horizontal"));
        }

        table.AddRow("mass", MeasureFormat.Mass(panel.Mass) + TableConsole.Origin(panel.MassOrigin));
        console.Write(table.HideHeaders());
        TableConsole.Notes(console, panel.Caveats);
    }

    private static void WriteFramings(IAnsiConsole console, IReadOnlyList<FramingPlan> framings)
    {
        var table = TableConsole.Table("Framings", "framing", "with", "field", "working distance", "subject to sensor", "f-number ×");
        foreach (var framing in framings)
        {
            table.AddRow(
                Markup.Escape(framing.Name),
                Markup.Escape(With(framing)),
                PlanFormat.Rectangle(framing.FieldWidth, framing.FieldHeight),
                PlanFormat.GiveOrTake(framing.WorkingDistance, framing.WorkingDistanceUncertainty),
                PlanFormat.Millimetres(framing.SubjectToSensor),
                MeasureFormat.ThreeDigits(framing.EffectiveApertureFactor));
        }

        console.Write(table);
        TableConsole.Notes(console, framings.SelectMany(framing => framing.Caveats).Distinct(StringComparer.Ordinal).Concat(LensAssumptionText.Of(framings)));
    }

    private static string With(FramingPlan framing) => framing switch
    {
        { Limit: { } limit } => ReachText.Of(limit),
        { Accessories.Count: 0 } => "lens alone",
        _ => string.Join(" + ", framing.Accessories),
    };

    private static void WriteSetUp(IAnsiConsole console, string setUp, IReadOnlyList<ExposurePlan> exposures, AdviceBook advice, HashSet<string> said)
    {
        var table = TableConsole.Table(setUp, "framing", "aperture", "shutter", "ISO", "flashes", "white margin, least to most", "ambient", "give or take", "first frame", "depth of field");
        foreach (var column in new[] { 1, 2, 3, 6 })
        {
            table.Columns[column].NoWrap();
        }

        foreach (var exposure in exposures)
        {
            table.AddRow(
                Markup.Escape(exposure.Framing.Name),
                exposure.Aperture.Nominal,
                exposure.Shutter.Nominal,
                exposure.Iso.Nominal,
                Markup.Escape(string.Join('\n', exposure.Lights.Select(Light))),
                exposure is { WhiteMargin: { } darkest, BrightestMargin: { } brightest } ? $"{darkest.Nominal} to {brightest.Nominal}" : "–",
                exposure.AmbientLevel.Nominal,
                $"{MeasureFormat.ThreeDigits(Math.Round(exposure.Uncertainty.Value, 2))} stop",
                VerdictText.FirstFrame(exposure),
                PlanFormat.Millimetres(exposure.Sharpness.DepthOfField));
        }

        console.Write(table);
        TableConsole.Notes(console, exposures.Where(exposure => exposure.Verdict.Verdict != Verdict.Works).SelectMany(exposure => NotQuite(exposure, advice)));
        TableConsole.Notes(console, exposures.SelectMany(exposure => WarningText.Of(exposure, advice).Select(text => $"{exposure.Framing.Name}: {text}")));
        TableConsole.Notes(console, exposures.SelectMany(exposure => exposure.Caveats).Where(said.Add));
    }

    private static IEnumerable<string> NotQuite(ExposurePlan exposure, AdviceBook advice) =>
        advice.Mending(exposure).Select(change => $"  or {AdviceText.Of(exposure, change)}")
            .Prepend($"{exposure.Framing.Name}, {VerdictText.Word(exposure)}: {VerdictText.Missed(exposure)}");

    private static string Light(LightPlan light) =>
        $"{MemberText.Of(light.Role)} {light.PowerText} at {DistanceFormat.Centimetres(light.Distance)}, {PlanFormat.Zoom(light.Zoom)}";

    private static void WritePack(IAnsiConsole console, PackPlan pack)
    {
        var table = TableConsole.Table("Pack", "bag", "item", "count", "mass");
        table.Columns[2].RightAligned();
        table.Columns[3].RightAligned();
        foreach (var item in pack.Items.OrderBy(item => item.Bag, StringComparer.Ordinal))
        {
            table.AddRow(
                Markup.Escape(item.Bag ?? "–"),
                Markup.Escape(item.Name),
                item.Count.ToString(System.Globalization.CultureInfo.InvariantCulture),
                MeasureFormat.Mass(item.Mass) + TableConsole.Origin(item.Origin));
        }

        foreach (var bag in pack.Bags)
        {
            var share = bag.ShareOfBodyMass is { } value ? $", {MeasureFormat.Percent(value)} of the carrier's body mass" : "";
            table.AddRow(Markup.Escape(bag.Name), Markup.Escape($"bag in all{share}"), "", MeasureFormat.Mass(bag.Mass));
        }

        table.AddRow("", "everything", "", MeasureFormat.Mass(pack.Total));
        console.Write(table);
        TableConsole.Notes(console, pack.Notes);
    }

    private static void WriteChecks(IAnsiConsole console, Plan plan)
    {
        var table = TableConsole.Table("Checks", "", "check", "asked", "given", "if it fails");
        foreach (var check in plan.Checks)
        {
            table.AddRow(
                check.Passed ? "ok" : "FAILS",
                Markup.Escape(CheckText.Name(check)),
                Markup.Escape(CheckText.Demand(check)),
                Markup.Escape(CheckText.Capacity(check)),
                Markup.Escape($"{CheckText.Remedy(check)} {CheckText.Keys(check, plan)}".Trim()));
        }

        console.Write(table);
        TableConsole.Notes(console, plan.Checks.Select(CheckText.Note).Where(note => note.Length > 0));
    }

    private static void WriteDefaults(IAnsiConsole console, IReadOnlyList<PlanDefault> defaults)
    {
        if (defaults.Count == 0)
        {
            return;
        }

        console.WriteLine();
        console.WriteLine($"{defaults.Count} values that the kit leaves out were taken as usual; 'studiokit check --defaults' lists them.");
    }
}
