using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Cli.Usage;
using StudioKit.Field.Advice;
using StudioKit.Field.Ladders;
using StudioKit.FieldFiles.Frames;
using StudioKit.FieldFiles.Log;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Expected;
using StudioKit.Planning.Stations.OneWhite;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary>The question of <c>studiokit explore</c> that brings measured stations to one white: its options, and its answer.</summary>
internal sealed class StationsLadders(CommandHost host)
{
    private readonly Option<string[]> _ladders = new("--ladder") { Description = "Of several kits: folder with a power ladder of each in turn, e.g. ladders/fen, its powers in the pictures' names such as panel-1-16.jpg; tells what brings all to one white; left out, what the studios share is shown.", HelpName = "folder" };
    private readonly Option<string[]> _setUps = new("--set-up") { Description = "With --ladder: name of the set-up, e.g. white, one for all kits or one for each in turn; left out, the white-background one where there is only one.", HelpName = "name" };
    private readonly Option<string[]> _framings = new("--framing") { Description = "With --ladder: name of the framing, e.g. \"reed 55 at 1:2\", one for all kits or one for each in turn; left out, the one of the pictures' focal length, or the only one.", HelpName = "name" };
    private readonly Option<string[]> _pitches = new("--pitch") { Description = "With --ladder: camera pitch, e.g. 60°, one for all kits or one for each in turn, where a set-up has several; left out, its only one.", HelpName = "angle" };
    private readonly Option<Stops?> _target = QuantityOption.Optional<Stops?>("--target", "With --ladder: margin over clipping that all are to have, e.g. 1/2 stop; left out, the highest that a kit of theirs aims for, or the most that all come to.", TryMargin, null);
    private readonly Option<Stops> _tolerance = QuantityOption.Optional(
        "--tolerance", "With --ladder: how far from that margin is still one white, e.g. 1/3 stop; that where left out.", QuantityOption.Between<Stops>(QuantityText.TryStops, stops => stops.Value, "0.05 stop", "3 stops"), CommonWhitePlanner.UsualTolerance);

    public void AddTo(Command command)
    {
        foreach (var option in Options)
        {
            command.Options.Add(option);
        }
    }

    /// <summary>The first of its options that was given; none where the question is another one.</summary>
    public Option? Asked(ParseResult parsed) => Options.FirstOrDefault(option => parsed.GetResult(option) is { Implicit: false });

    /// <summary>Reads kits and ladders and prints the answer.</summary>
    public async Task<ExitCode> RunAsync(ParseResult parsed, string[] kits, bool asCsv, bool asJson)
    {
        if (!IsSound(parsed, kits))
        {
            return ExitCode.BadInput;
        }

        var plans = kits.Select(kit => KitInput.Read(kit, host) is { HasErrors: false } read ? KitPlanner.Plan(read) : null).ToList();
        if (plans.Contains(null))
        {
            return ExitCode.BadInput;
        }

        var (stations, code) = (new List<MeasuredStation>(), ExitCode.Done);
        foreach (var (kit, place) in kits.Select((kit, place) => (kit, place)))
        {
            var (station, fault) = await ReadAsync(parsed, kit, plans[place]!, place);
            code = station is null ? fault : code;
            stations.AddRange(station is null ? [] : [station]);
        }

        return code == ExitCode.Done ? Print(CommonWhitePlanner.Of(stations, parsed.GetValue(_target), parsed.GetValue(_tolerance)), asCsv, asJson) : code;
    }

    private Option[] Options => [_ladders, _setUps, _framings, _pitches, _target, _tolerance];

    private bool IsSound(ParseResult parsed, string[] kits)
    {
        var ladders = parsed.GetValue(_ladders) ?? [];
        var problem = ladders.Length == 0 ? $"{Asked(parsed)!.Name} is about measured stations; name the folder with each kit's ladder, e.g. --ladder ladders/fen --ladder ladders/pond."
            : kits.Length < 2 ? "--ladder brings several stations to one white; name their kits. Of one kit 'studiokit photo --ladder' tells what to turn."
            : ladders.Length < kits.Length ? $"{kits[ladders.Length]} has no ladder: {kits.Length} kits but {ladders.Length} ladder{(ladders.Length == 1 ? "" : "s")}; give one --ladder for each kit, in the same order."
            : ladders.Length > kits.Length ? $"There is no kit for {ladders[kits.Length]}: {kits.Length} kits but {ladders.Length} ladders; give one --ladder for each kit, in the same order."
            : new[] { _setUps, _framings, _pitches }.FirstOrDefault(option => (parsed.GetValue(option)?.Length ?? 0) is var count && count > 1 && count != kits.Length) is { } uneven
                ? $"{kits.Length} kits but {parsed.GetValue(uneven)!.Length} of {uneven.Name}; give one for all kits, or one for each in the same order."
            : (parsed.GetValue(_pitches) ?? []).Select(text => QuantityText.TryAngle(text, out _, out var wrong) ? null : $"--pitch: {wrong}").FirstOrDefault(wrong => wrong is not null);
        if (problem is not null)
        {
            host.Report(UsageCodes.BadUsage, problem);
        }

        return problem is null;
    }

    // The station; none where its ladder does not tell of it, which is then told.
    private async Task<(MeasuredStation? Station, ExitCode Code)> ReadAsync(ParseResult parsed, string kit, Plan plan, int place)
    {
        var folder = parsed.GetValue(_ladders)![place];
        if (!Directory.Exists(folder))
        {
            throw new FileTroubleException($"cannot read {folder}: there is no such folder; --ladder names a folder with the pictures of one ladder.");
        }

        var rungs = await LadderFiles.ReadAsync(folder, InputFile.Read(folder, path => LoggedPictureFiles.In([path])));
        if (!rungs.IsSound)
        {
            return (null, FieldFaults.Print(host, rungs.Diagnostics));
        }

        var station = StationLadder.Of(folder, Part(parsed, plan, place), rungs.Value, CorrectionFile.Of(kit, plan.Kit.Name)?.ToneCurve);
        return (station.Value, FieldFaults.Print(host, station.Diagnostics));
    }

    private TestFramePlan Part(ParseResult parsed, Plan plan, int place) => new(
        plan, new ExpectedLight(plan), Of(parsed, _setUps, place), Of(parsed, _framings, place),
        QuantityText.TryAngle(Of(parsed, _pitches, place), out var pitch, out _) ? pitch : null);

    // One for all, or one for each.
    private static string Of(ParseResult parsed, Option<string[]> option, int place) => parsed.GetValue(option) switch
    {
        { Length: 1 } one => one[0],
        { Length: > 1 } each => each[place],
        _ => "",
    };

    private ExitCode Print(CommonWhite white, bool asCsv, bool asJson)
    {
        if (asJson)
        {
            host.Output.WriteLine(JsonReport.Document(json => CommonWhiteJson.Write(json, white)));
        }
        else if (asCsv)
        {
            host.Output.Write(CommonWhiteTable.Of(white));
        }
        else
        {
            CommonWhiteTables.Write(white, host);
        }

        if (!white.IsOneWhite)
        {
            host.Error.WriteLine($"check fails: not shown to be one white: {string.Join(", ", white.Stations.Where(station => station.Decision != ConformityDecision.Within).Select(station => station.Name))}.");
        }

        return white.IsOneWhite ? ExitCode.Done : ExitCode.PlanFails;
    }

    private static bool TryMargin(string text, out Stops? value, out string problem)
    {
        var read = QuantityOption.Between<Stops>(QuantityText.TryStops, stops => stops.Value, "0 stops", "6 stops")(text, out var stops, out problem);
        value = stops;
        return read;
    }
}
