using System.CommandLine;
using System.Globalization;
using StudioKit.Cli.Files;
using StudioKit.Cli.Running;
using StudioKit.Cli.Usage;
using StudioKit.Kits;
using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Sheets;
using StudioKit.Sheets.Cards;
using StudioKit.Writing;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit sheets</c>: writes everything that is printed.</summary>
internal static class SheetsCommand
{
    private const string Text =
        """
        Writes the field pack, plan report, exposure and handling cards, build sheet, templates, session plan, pack list, appendix and drawings of a kit as PDF, SVG and CSV files, prints the name of each,
        and says what to print first.

        Print them at 100 %; templates, the page of small parts and cards have a square or a rule to measure that by. Where the plan fails a check, mend-first.pdf says what to mend, and cards that
        cannot work are left out.

        With a day and a place, in the kit's site or by --day, --latitude and --longitude, they have the day too: sun, shade, light to expect and when to begin.

        Example: studiokit sheets kits/fen-edge.yaml --out out/fen-edge --date 2027-05-14
        Example: studiokit sheets kits/fen-edge.yaml --out out/fen-edge --day 2026-06-14 --latitude 52.3 --longitude 5.1
        """;

    public static Command Create(CommandHost host)
    {
        var kit = KitInput.Argument();
        var output = new Option<string>("--out") { Description = "Folder to write into, e.g. out/fen-edge; made where it is missing.", Required = true, HelpName = "folder" };
        var paper = ChoiceOption.Create("--paper", "Paper in the printer, e.g. letter.", Paper.A4);
        var cards = CardsOption();
        var templates = TemplateOption();
        var date = DateOption();
        var book = new Option<bool>("--book") { Description = "Write one file, field-book.pdf, with a cover, a table of contents and every sheet in it, and the field pack beside it, instead of a file for each." };
        var evenIfFailing = new Option<bool>("--even-if-failing") { Description = "Print cards that cannot work all the same, each with what would make it work; left out without this." };
        var units = ChoiceOption.Create("--units", "Units of all sheets, cards, drawings and tables: metric, inches (with pounds), or e.g. both beside each other. What the kit gives in inches is always said as it stands there.", TextUnits.Metric);
        var force = ForceOption.Create();
        var day = new DayOptions("--day");
        var command = new Command("sheets", Text) { kit, output, paper, cards, templates, units, date, book, evenIfFailing, force };
        day.AddTo(command);
        command.SetAction(parsed =>
        {
            var read = day.Apply(parsed, KitInput.Read(parsed.GetRequiredValue(kit), host), host);
            if (read.HasErrors)
            {
                return (int)ExitCode.BadInput;
            }

            foreach (var warning in UnprintedText.In(parsed.GetRequiredValue(kit), read))
            {
                host.Report(warning);
            }

            if (CardInput.Read(parsed.GetValue(cards) ?? [], parsed.GetValue(templates) ?? [], host) is not { } chosen)
            {
                return (int)ExitCode.BadInput;
            }

            if (!Fit(chosen, parsed.GetRequiredValue(paper), host))
            {
                return (int)ExitCode.BadInput;
            }

            var plan = Planner.Plan(read);
            var options = new SheetOptions
            {
                Date = parsed.GetValue(date),
                Paper = parsed.GetRequiredValue(paper),
                Cards = chosen,
                Units = parsed.GetValue(units),
                EvenIfFailing = parsed.GetValue(evenIfFailing),
            };
            string[] inputs = [parsed.GetRequiredValue(kit), .. parsed.GetValue(templates) ?? []];
            var folder = parsed.GetRequiredValue(output);
            using var batch = OutputFiles.Open(host, parsed.GetValue(force), inputs);
            var files = parsed.GetValue(book)
                ? [.. SheetSet.WriteBook(plan, options).Select(Waiting)]
                : SheetsAbreast.Write(SheetSet.Groups(plan, options), Environment.ProcessorCount, Waiting);
            OutputFiles.Committed(host, batch);
            Tell(host, files, folder);
            return (int)Verdict(Planner.Verdict(plan, host), files);

            // What waits on the disk needs no room in memory.
            SheetFile Waiting(SheetFile file)
            {
                batch.Add(new FileTarget(OutputFiles.In(folder, file.Name)), file.Content);
                return file with { Content = default };
            }
        });
        return command;
    }

    private static bool Fit(IReadOnlyList<CardTemplate> cards, Paper paper, CommandHost host)
    {
        foreach (var card in cards.Where(card => !CardFit.On(card, paper)))
        {
            host.Report(UsageCodes.BadUsage, $"a card of {card.Size.Name} does not fit on {ChoiceWords.Of(paper)}; take a smaller size, e.g. --cards \"130 mm x 180 mm\".");
        }

        return cards.All(card => CardFit.On(card, paper));
    }

    // What did not fit is missing from the sheets, whatever the plan is worth.
    private static ExitCode Verdict(ExitCode plan, IReadOnlyList<SheetFile> files) =>
        plan == ExitCode.Done && files.Any(file => file.Problems.Count > 0) ? ExitCode.PlanFails : plan;

    private static void Tell(CommandHost host, IReadOnlyList<SheetFile> files, string folder)
    {
        foreach (var problem in files.SelectMany(file => file.Problems.Select(problem => $"{file.Name}: {problem}")))
        {
            host.Error.WriteLine($"does not fit: {problem}");
        }

        foreach (var file in files)
        {
            host.Output.WriteLine(OutputFiles.In(folder, file.Name));
        }

        foreach (var line in PrintFirst.Of(files))
        {
            host.Error.WriteLine(line);
        }
    }

    private static Option<CardSize[]> CardsOption()
    {
        var names = string.Join(", ", CardTemplates.Names);
        return new Option<CardSize[]>("--cards")
        {
            Description = $"Sizes of card, one file each: {names}, or a size of your own, e.g. \"90 mm x 130 mm\". A6 and 3x5in where left out and no template is given.",
            HelpName = "size",
            AllowMultipleArgumentsPerToken = true,
            CustomParser = result => [.. result.Tokens.Select(token => Size(token.Value, result.AddError)).OfType<CardSize>()],
        };
    }

    private static Option<string[]> TemplateOption() => new("--template")
    {
        Description = "Card templates of your own, e.g. my-card.yaml, one file of cards each; none where left out. 'studiokit new --template A6 my-card.yaml' writes one to change.",
        HelpName = "file",
        AllowMultipleArgumentsPerToken = true,
    };

    private static CardSize? Size(string text, Action<string> complain)
    {
        if (QuantityText.TryCardSize(text, out var size, out var problem))
        {
            return size;
        }

        complain($"--cards: {problem}");
        return null;
    }

    private static Option<DateOnly?> DateOption() => new("--date")
    {
        Description = "Date to print on every sheet, e.g. 2027-05-14; none where left out, so that the same kit gives the same files.",
        HelpName = "date",
        CustomParser = result =>
        {
            if (result.Tokens.Count == 1
                && DateOnly.TryParseExact(result.Tokens[0].Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            {
                return date;
            }

            result.AddError($"--date: '{string.Join(' ', result.Tokens.Select(token => token.Value))}' is no date; write it as 2027-05-14.");
            return null;
        },
    };
}
