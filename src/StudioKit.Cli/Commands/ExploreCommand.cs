using System.CommandLine;
using System.Globalization;
using System.Text;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Cli.Usage;
using StudioKit.Field.Calibration;
using StudioKit.Kits;
using StudioKit.Kits.Exploring;
using StudioKit.Physics;
using StudioKit.Planning;
using StudioKit.Planning.Exploring;
using StudioKit.Planning.Stations;
using StudioKit.Sheets.Json;
using StudioKit.Sheets.Plots;
using StudioKit.Sheets.Svg;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit explore</c>: the designs that a kit leaves open, and those that no other beats.</summary>
internal sealed class ExploreCommand
{
    private const string Text =
        """
        Plans the designs that a kit leaves open and shows those that no other beats: lighter, cheaper or whiter. What is open stands in the
        kit's 'explore' section; where there is none, what usually is open is varied. Every design is planned as its written kit would be, and
        counts only where its plan passes all checks. Where there are too many to try all, what was tried is said, and what is proven of it.

        With --take it writes the kit of one design as a new file, comments kept. Of several kits it shows what their studios, used side by
        side, can share: stock cut together, tools, spare parts that fit them all, and radio channels that they must not share.

        With --ladder, a power ladder of each of several kits, it tells what brings the white of all to one margin, as near as the flashes'
        dials go and planned with what was measured, and whether each is then within --tolerance for all that the measurement leaves open.

        Exit code 1 says that no design stands within the limits, or that a station is not shown to be within the tolerance.

        Example: studiokit explore kits/fen-edge.yaml --lightest --limit "white-margin 1/3 stop"
        Example: studiokit explore kits/fen-edge.yaml kits/pond-edge.yaml
        Example: studiokit explore kits/fen-edge.yaml kits/pond-edge.yaml --ladder ladders/fen --ladder ladders/pond --set-up white --set-up "bee under the tub" --framing "reed 55 at 1:2" --framing "rush 105 at 1:1" --pitch 60°
        """;

    private readonly CommandHost _host;
    private readonly Argument<string[]> _kits = KitInput.Arguments();
    private readonly Option<string[]> _compare = new("--compare")
    {
        Description = $"Measures to compare by, two to four, e.g. mass,white-margin, of {string.Join(", ", DesignFigures.Measures.Select(measure => MemberText.Of(measure)))}; the kit's where left out, else mass, white-margin and price.",
        HelpName = "measures",
    };

    private readonly Option<string[]> _limits = new("--limit") { Description = "How far a measure may go, e.g. \"mass 3 kg\" or \"white-margin 1/3 stop\"; may be given several times, beside the kit's own. None where left out.", HelpName = "measure and amount" };
    private readonly Option<bool> _lightest = new("--lightest") { Description = "Answer in one line: the lightest design." };
    private readonly Option<bool> _cheapest = new("--cheapest") { Description = "Answer in one line: the cheapest design." };
    private readonly Option<bool> _whitest = new("--whitest") { Description = "Answer in one line: the design whose darkest point is whitest." };
    private readonly Option<int> _most = new("--most") { Description = "Designs to try, e.g. 500; so many or fewer are all tried. 2000 where left out.", HelpName = "count", DefaultValueFactory = _ => new DesignSearchOptions().Most };
    private readonly Option<int> _seed = new("--seed") { Description = "Seed of the search where not all are tried, e.g. 7; 1 where left out. Same seed, same answer.", HelpName = "number", DefaultValueFactory = _ => new DesignSearchOptions().Seed };
    private readonly Option<Duration> _timeLimit = QuantityOption.Optional(
        "--time-limit", "Longest time to look, e.g. \"60 s\"; what was found until then is shown. As long as it takes where left out.",
        QuantityOption.Between<Duration>(QuantityText.TryDuration, time => time.Seconds, "0.1 s", "24 h"), Duration.Zero);

    private readonly Option<string?> _take = new("--take") { Description = "Number or code of the design whose kit is written, e.g. 3 or 2-1-4; none where left out.", HelpName = "design" };
    private readonly Option<string?> _out = new("--out") { Description = "File for the kit of --take, e.g. lighter.yaml; left out without --take.", HelpName = "file" };
    private readonly Option<string?> _plot = new("--plot") { Description = "File for a picture of the designs by the first two measures, e.g. designs.svg; none where left out.", HelpName = "file" };
    private readonly Option<bool> _csv = new("--csv") { Description = "Print the designs as comma-separated text." };
    private readonly Option<bool> _json = JsonOption.Create();
    private readonly Option<bool> _force = ForceOption.Create();
    private readonly StationsLadders _stations;

    private ExploreCommand(CommandHost host)
    {
        (_host, _stations) = (host, new StationsLadders(host));
        _compare.AllowMultipleArgumentsPerToken = true;
        foreach (var number in new[] { _most, _seed })
        {
            number.Validators.Add(result =>
            {
                if (result.Tokens.Count == 1 && (!int.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count is < 1 or > 1_000_000))
                {
                    result.AddError($"{number.Name} is a whole number from 1 to 1000000.");
                }
            });
        }
    }

    public static Command Create(CommandHost host)
    {
        var explore = new ExploreCommand(host);
        var command = new Command("explore", Text)
        {
            explore._kits, explore._compare, explore._limits, explore._lightest, explore._cheapest, explore._whitest, explore._most, explore._seed, explore._timeLimit,
            explore._take, explore._out, explore._plot, explore._csv, explore._json, explore._force,
        };

        explore._stations.AddTo(command);

        // On a thread of its own, so that an interrupt reaches the search while it runs.
        command.SetAction((parsed, stop) => Task.Run(async () => (int)await explore.RunAsync(parsed, stop), CancellationToken.None));
        return command;
    }

    private async Task<ExitCode> RunAsync(ParseResult parsed, CancellationToken stop)
    {
        var kits = parsed.GetRequiredValue(_kits);
        if (_stations.Asked(parsed) is not null)
        {
            return IsAboutSeveral(parsed, _csv) ? await _stations.RunAsync(parsed, kits, parsed.GetValue(_csv), parsed.GetValue(_json)) : ExitCode.BadInput;
        }

        return kits.Length == 1 ? Run(parsed, stop) : IsAboutSeveral(parsed) ? Shared(parsed, kits) : ExitCode.BadInput;
    }

    private bool IsAboutSeveral(ParseResult parsed, params Option[] allowed)
    {
        Option[] single = [_compare, _limits, _lightest, _cheapest, _whitest, _most, _seed, _timeLimit, _take, _out, _plot, _csv];
        if (single.Except(allowed).FirstOrDefault(option => parsed.GetResult(option) is { Implicit: false }) is { } named)
        {
            _host.Report(UsageCodes.BadUsage, $"{named.Name} is about the designs of one kit; of several kits 'explore' shows what their studios share, or with --ladder what makes them one white.");
            return false;
        }

        return true;
    }

    private ExitCode Run(ParseResult parsed, CancellationToken stop)
    {
        if (!IsSound(parsed) || DesignInput.Read(parsed.GetRequiredValue(_kits)[0], _host) is not { } input || SpaceOf(input) is not { Space: { } space } reading)
        {
            return ExitCode.BadInput;
        }

        var own = FigureReader.Of(Planner.Plan(input.Kit), 0);
        if (AimOf(parsed, input.Kit.Kit!, own) is not { } aim)
        {
            return ExitCode.BadInput;
        }

        // A code of one choice alone would be a number.
        if (parsed.GetValue(_take) is { } code && space.Choices.Count > 1 && DesignCode.Read(code, space.Choices) is { } taken)
        {
            return Taken(parsed, input, space, taken);
        }

        var result = Searched(parsed, space, aim, stop);
        var written = WritePlot(parsed, input, result);
        if (parsed.GetValue(_take) is { } number)
        {
            return TakenByNumber(parsed, input, result, number);
        }

        Print(parsed, result, reading.IsUsual);
        foreach (var file in written)
        {
            _host.Error.WriteLine(file);
        }

        return Verdict(result);
    }

    private ExitCode Shared(ParseResult parsed, string[] kits)
    {
        var plans = new List<Plan>();
        foreach (var kit in kits)
        {
            if (KitInput.Read(kit, _host) is not { HasErrors: false } read)
            {
                return ExitCode.BadInput;
            }

            plans.Add(Planner.Plan(read));
        }

        var shared = StationsPlanner.Of(plans, Planner.Services);
        if (parsed.GetValue(_json))
        {
            _host.Output.WriteLine(JsonReport.Document(json => StationsJson.Write(json, shared)));
        }
        else
        {
            StationsTables.Write(shared, _host);
        }

        return ExitCode.Done;
    }

    private bool IsSound(ParseResult parsed)
    {
        var single = new[] { _lightest, _cheapest, _whitest }.Count(parsed.GetValue);
        var problem = single > 1 ? "--lightest, --cheapest and --whitest each ask for one design; give one of them, and the others as --limit."
            : single == 1 && parsed.GetValue(_compare) is { Length: > 0 } ? "--compare shows designs beside each other, and --lightest, --cheapest or --whitest one alone; give one of them."
            : single == 1 && parsed.GetValue(_plot) is not null ? "--plot draws designs by two measures; leave out --lightest, --cheapest or --whitest."
            : parsed.GetValue(_take) is not null && parsed.GetValue(_out) is null ? "--take writes a kit; say where with --out, e.g. --out lighter.yaml."
            : parsed.GetValue(_take) is null && parsed.GetValue(_out) is not null ? "--out is the file for --take; say which design, e.g. --take 1."
            : null;
        if (problem is not null)
        {
            _host.Report(UsageCodes.BadUsage, problem);
            _host.Error.WriteLine("Try 'studiokit explore --help'.");
        }

        return problem is null;
    }

    private DesignSpaceReading SpaceOf(DesignInput input)
    {
        var reading = DesignSpace.Of(input.Text, input.Kit, input.Reading);
        foreach (var problem in reading.Problems)
        {
            var lines = input.Text.Text.ReplaceLineEndings("\n").Split('\n');
            _host.Report(new Diagnostic(
                DiagnosticCodes.Contradiction, DiagnosticSeverity.Error, input.Path, problem.At?.Line ?? 1, problem.At?.Column ?? 1, DesignProblemText.Message(problem), DesignProblemText.Hint(problem),
                problem.At is { } at && at.Line <= lines.Length ? lines[at.Line - 1] : ""));
        }

        return reading;
    }

    private DesignAim? AimOf(ParseResult parsed, KitSpec kit, DesignFigures own)
    {
        if (Limits(parsed.GetValue(_limits) ?? []) is not { } limits || Measures(parsed, kit, own) is not { } measures)
        {
            return null;
        }

        ValueList<DesignLimit> all = [.. kit.Explore?.Limits ?? [], .. limits];
        foreach (var unknown in measures.Concat(all.Select(limit => limit.Measure)).Distinct().Where(measure => own[measure] is null))
        {
            _host.Report(UsageCodes.Refused, DesignText.Unknown(unknown));
            return null;
        }

        return new DesignAim(measures, all);
    }

    private ValueList<DesignMeasure>? Measures(ParseResult parsed, KitSpec kit, DesignFigures own)
    {
        if (Single(parsed) is { } single)
        {
            return [single];
        }

        if (parsed.GetValue(_compare) is not { Length: > 0 } given)
        {
            return kit.Explore is { Measures.Count: > 0 } explore ? explore.Measures : DesignAim.UsualFor(own);
        }

        var words = given.SelectMany(word => word.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).ToList();
        var measures = new List<DesignMeasure>();
        foreach (var word in words)
        {
            if (DesignLimitText.Measure(word, out var problem) is not { } measure)
            {
                _host.Report(UsageCodes.BadUsage, $"--compare: {problem}");
                return null;
            }

            measures.Add(measure);
        }

        if (measures.Distinct().Count() == measures.Count && measures.Count is >= 2 and <= 4)
        {
            return [.. measures];
        }

        _host.Report(UsageCodes.BadUsage, "--compare: designs are compared by two to four measures, each named once, e.g. --compare mass,white-margin.");
        return null;
    }

    private DesignMeasure? Single(ParseResult parsed) =>
        parsed.GetValue(_lightest) ? DesignMeasure.Mass : parsed.GetValue(_cheapest) ? DesignMeasure.Price : parsed.GetValue(_whitest) ? DesignMeasure.WhiteMargin : null;

    private List<DesignLimit>? Limits(string[] texts)
    {
        var limits = new List<DesignLimit>();
        foreach (var text in texts)
        {
            if (!DesignLimitText.TryRead(text, out var limit, out var problem))
            {
                _host.Report(UsageCodes.BadUsage, $"--limit: {problem}");
                return null;
            }

            limits.Add(limit!);
        }

        return limits;
    }

    private DesignSearchResult Searched(ParseResult parsed, DesignSpace space, DesignAim aim, CancellationToken stop)
    {
        using var limited = CancellationTokenSource.CreateLinkedTokenSource(stop, _host.Stop);
        if (parsed.GetValue(_timeLimit) > Duration.Zero)
        {
            limited.CancelAfter(parsed.GetValue(_timeLimit).ToTimeSpan());
        }

        var progress = new DesignProgressLine(_host);
        var options = new DesignSearchOptions { Most = parsed.GetValue(_most), Seed = parsed.GetValue(_seed), AtOnce = Environment.ProcessorCount, Services = Planner.Services };
        var result = DesignSearch.Run(space, aim, options, progress, limited.Token);
        progress.End();
        return result;
    }

    private void Print(ParseResult parsed, DesignSearchResult result, bool isUsual)
    {
        if (parsed.GetValue(_json))
        {
            _host.Output.WriteLine(JsonReport.Document(json => DesignJson.Write(json, result, isUsual)));
        }
        else if (parsed.GetValue(_csv))
        {
            _host.Output.Write(DesignTable.Of(result));
        }
        else if (Single(parsed) is { } single)
        {
            PrintOne(single, result);
        }
        else
        {
            DesignTables.Write(result, isUsual, _host);
        }
    }

    private void PrintOne(DesignMeasure measure, DesignSearchResult result)
    {
        if (result.Shown.Count > 0)
        {
            var (best, currency) = (result.Shown[0], DesignText.CurrencyOf(result));
            var against = DesignText.AgainstOwn(best, result);
            _host.Output.WriteLine($"{DesignText.Amount(measure, best.Figures[measure], currency)}: {DesignText.Changes(best.Changes)}{(against.Length > 0 ? $" ({against})" : "")}; design {best.Code}");
        }

        foreach (var line in DesignText.Proof(result))
        {
            _host.Error.WriteLine(line);
        }
    }

    private IReadOnlyList<string> WritePlot(ParseResult parsed, DesignInput input, DesignSearchResult result) => parsed.GetValue(_plot) is { } path
        ? OutputFiles.Write(_host, parsed.GetValue(_force), [input.Path], [(path, SvgWriter.Write(DesignPlot.Of(result)))])
        : [];

    private ExitCode TakenByNumber(ParseResult parsed, DesignInput input, DesignSearchResult result, string number)
    {
        if (int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var place) && place >= 1 && place <= result.Shown.Count)
        {
            return Taken(parsed, input, result.Space, result.Shown[place - 1].Code);
        }

        _host.Report(UsageCodes.Refused, result.Shown.Count == 0
            ? "--take: no design stands within the limits."
            : string.Create(CultureInfo.InvariantCulture, $"--take: there is no design '{number}'. Give a number from 1 to {result.Shown.Count}, or a code such as {result.Shown[0].Code}."));
        return result.Shown.Count == 0 ? ExitCode.PlanFails : ExitCode.BadInput;
    }

    private ExitCode Taken(ParseResult parsed, DesignInput input, DesignSpace space, DesignCode code)
    {
        var path = parsed.GetRequiredValue(_out)!;
        if (space.TextOf(code) is not { } text || space.Read(code) is not { Kit: { } kit })
        {
            _host.Report(UsageCodes.Refused, $"--take: the options of design {code} do not go together; its kit cannot be read.");
            return ExitCode.BadInput;
        }

        if (input.Reading(text.Text, PartsLibrary.BesideKit(path)).Kit != kit)
        {
            _host.Report(UsageCodes.Refused, $"--out: the kit names parts that lie beside it; write it into the same folder as {input.Path}, so that it finds them.");
            return ExitCode.BadInput;
        }

        // What was measured goes with the kit, as it is in the figures that were shown.
        List<(string Path, ReadOnlyMemory<byte> Content)> files = [(path, Encoding.UTF8.GetBytes(text.Text))];
        if (input.Correction is { } correction)
        {
            files.Add((KitCorrectionFile.PathBeside(path), Encoding.UTF8.GetBytes(correction.Text)));
        }

        foreach (var file in OutputFiles.Write(_host, parsed.GetValue(_force), [input.Path], files))
        {
            _host.Output.WriteLine(file);
        }

        return ExitCode.Done;
    }

    private ExitCode Verdict(DesignSearchResult result)
    {
        if (result.IsStopped)
        {
            _host.Error.WriteLine($"studiokit: {(_host.Stop.IsCancellationRequested ? "stopped" : "the time is up")}; this is what was found so far.");
        }

        if (result.Shown.Count == 0)
        {
            _host.Error.WriteLine($"check fails: {DesignText.NoneStands(result)}");
        }

        return result.IsStopped && _host.Stop.IsCancellationRequested ? ExitCode.Stopped : result.Shown.Count == 0 ? ExitCode.PlanFails : ExitCode.Done;
    }
}
