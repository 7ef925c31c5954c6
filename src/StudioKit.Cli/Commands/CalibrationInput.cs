using System.CommandLine;
using System.Globalization;
using StudioKit.Cli.Files;
using StudioKit.Field;
using StudioKit.Field.Advice;
using StudioKit.Field.Calibration;
using StudioKit.Field.Calibration.Drift;
using StudioKit.Field.Pictures;
using StudioKit.FieldFiles.Frames;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary>The readings that <c>studiokit calibrate</c> is given: tables and pictures, each with the day of its outing.</summary>
internal sealed class CalibrationInput(CommandHost host)
{
    private readonly Option<string[]> _tables = new("--readings") { Description = "Table of readings, comma-separated, e.g. readings.csv; may be given several times, and left out where frames are given.", HelpName = "file" };
    private readonly Option<string[]> _frames = new("--frame") { Description = "Test frame of the bare sheet, e.g. panel.jpg; may be given several times, and left out where readings are given.", HelpName = "file" };
    private readonly Option<string[]> _powers = new("--power") { Description = "Power of the lower flash, e.g. 1/16: one for all frames, or one for each in turn; left out, those of the plan.", HelpName = "power" };
    private readonly Option<Length> _distance = QuantityOption.Optional("--distance", "Lower flash to panel, e.g. \"45 cm\", where it was not as planned; left out, as planned.", QuantityText.TryLength, Length.Zero);
    private readonly Option<string?> _date = new("--date") { Description = "Day of readings that do not name their own, e.g. 2026-05-09; today where left out.", HelpName = "day" };
    private readonly PlanOptions _planned = new();

    /// <summary>The files that it reads.</summary>
    public IReadOnlyList<string> Files(ParseResult parsed) => [.. parsed.GetValue(_tables) ?? [], .. parsed.GetValue(_frames) ?? []];

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _tables, _frames, _powers, _distance, _date })
        {
            command.Options.Add(option);
        }

        _planned.AddTo(command, withKit: false);
    }

    /// <summary>The tables as noted; none where one is wrong, which is then told. A slip in a table is told before the plan, which takes longer.</summary>
    public IReadOnlyList<FieldReading>? Tables(ParseResult parsed)
    {
        var tables = (parsed.GetValue(_tables) ?? []).Select(path => FieldReadingTable.Parse(path, InputFile.Text(path, FieldReadingTable.MostBytes))).ToList();
        FieldFaults.Print(host, tables.SelectMany(table => table.Diagnostics));
        return tables.TrueForAll(table => table.IsSound) ? [.. tables.SelectMany(table => table.Value!)] : null;
    }

    /// <summary>Day of whatever does not name its own; none where it cannot be read, which is then told.</summary>
    public DateOnly? Day(ParseResult parsed)
    {
        var day = DateOnly.FromDateTime(host.Clock.GetLocalNow().Date);
        if (parsed.GetValue(_date) is not { } date || DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day))
        {
            return day;
        }

        host.Error.WriteLine($"studiokit: --date: '{date}' is not a date; write it as 2026-05-09.");
        return null;
    }

    /// <summary>Powers of the frames; none where they do not go with them, which is then told.</summary>
    public IReadOnlyList<FlashPower>? Powers(ParseResult parsed)
    {
        var powers = new List<FlashPower>();
        foreach (var text in parsed.GetValue(_powers) ?? [])
        {
            if (!QuantityText.TryPower(text, out var power, out var problem))
            {
                host.Error.WriteLine($"studiokit: --power: {problem}");
                return null;
            }

            powers.Add(ThirdStopSeries.FromMark(power));
        }

        var frames = parsed.GetValue(_frames)?.Length ?? 0;
        if (powers.Count == frames || (powers.Count == 1 && frames > 0))
        {
            return powers;
        }

        host.Error.WriteLine($"studiokit: {frames} frames but {powers.Count} powers; name one --power for all frames, or one for each in the same order.");
        return null;
    }

    /// <summary>All readings beside what the plan expects; none where one cannot be used, which is then told.</summary>
    public IReadOnlyList<DatedReading>? Read(ParseResult parsed, Plan plan, IReadOnlyList<FieldReading> table, IReadOnlyList<FlashPower> powers, ToneCurve? curve, DateOnly day)
    {
        var planned = new PlannedReadings(plan).Of(table);
        var (readings, faults) = (new List<DatedReading>(), planned.Diagnostics.ToList());
        readings.AddRange((planned.Value ?? []).Zip(table, (reading, noted) => new DatedReading(noted.Date ?? day, reading)));
        var part = _planned.Of(parsed, plan);
        foreach (var (path, i) in (parsed.GetValue(_frames) ?? []).Select((path, i) => (path, i)))
        {
            AddFrame(path, part, new ShotSettings(powers[Math.Min(i, powers.Count - 1)], Distance(parsed)), curve, day, readings, faults);
        }

        FieldFaults.Print(host, faults);
        return faults.Count > 0 ? null : readings;
    }

    private static void AddFrame(string path, TestFramePlan part, ShotSettings shot, ToneCurve? curve, DateOnly day, List<DatedReading> readings, List<FieldDiagnostic> faults)
    {
        var frame = TestFrameFile.AnalyseBarePanel(path, curve);
        var place = frame.IsSound ? part.ViewOf(frame.Value) : null;
        var reading = place is { IsSound: true } ? FrameReading.Of(frame.Value!, place.Value, shot, part.Expected) : null;
        faults.AddRange([.. frame.Diagnostics, .. place?.Diagnostics ?? [], .. reading?.Diagnostics ?? []]);
        if (reading?.Value is { } sound)
        {
            readings.Add(new DatedReading(frame.Value!.Settings.TakenLocal is { } taken ? DateOnly.FromDateTime(taken) : day, sound));
        }
    }

    private Length? Distance(ParseResult parsed) => parsed.GetValue(_distance) is var given && given > Length.Zero ? given : null;
}
