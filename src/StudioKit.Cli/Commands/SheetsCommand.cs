using System.CommandLine;
using System.Globalization;
using StudioKit.Cli.Files;
using StudioKit.Kits;
using StudioKit.Sheets;
using StudioKit.Sheets.Cards;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit sheets</c>: writes everything that is printed.</summary>
internal static class SheetsCommand
{
    private const string Text =
        """
        Writes the plan report, exposure cards, build sheet, cut list, pack list and drawings of a kit as PDF, SVG and CSV files, and prints the name of each.

        Print them at 100 %; every page has a rule or a square to measure that by.

        Example: studiokit sheets kits/fen-edge.yaml --out out/fen-edge --date 2027-05-14
        """;

    private static readonly CardFormat[] UsualCards = [CardFormat.A6, CardFormat.Index3By5];

    private static readonly IReadOnlyDictionary<string, CardFormat> Formats = new Dictionary<string, CardFormat>(StringComparer.OrdinalIgnoreCase)
    {
        [CardFormat.Id1.Name] = CardFormat.Id1,
        [CardFormat.A7.Name] = CardFormat.A7,
        [CardFormat.A6.Name] = CardFormat.A6,
        [CardFormat.Index3By5.Name] = CardFormat.Index3By5,
        [CardFormat.Index4By6.Name] = CardFormat.Index4By6,
    };

    public static Command Create(CommandHost host)
    {
        var kit = KitInput.Argument();
        var output = new Option<string>("--out") { Description = "Folder to write into; made where it is missing.", Required = true, HelpName = "folder" };
        var paper = new Option<Paper>("--paper") { Description = "Paper in the printer.", DefaultValueFactory = _ => Paper.A4 };
        var cards = CardsOption();
        var date = DateOption();
        var book = new Option<bool>("--book") { Description = "Write one file, field-book.pdf, with a cover, a table of contents and every sheet in it, instead of a file for each." };
        var units = new Option<SheetUnits>("--units") { Description = "Units of the build sheet: metric, or both for inches beside millimetres.", DefaultValueFactory = _ => SheetUnits.Metric };
        var force = ForceOption.Create();
        var command = new Command("sheets", Text) { kit, output, paper, cards, units, date, book, force };
        command.SetAction(parsed =>
        {
            var read = KitInput.Read(parsed.GetRequiredValue(kit), host);
            if (read.HasErrors)
            {
                return (int)ExitCode.BadInput;
            }

            var plan = Planner.Plan(read);
            var options = new SheetOptions
            {
                Date = parsed.GetValue(date),
                Paper = parsed.GetRequiredValue(paper),
                CardFormats = parsed.GetValue(cards) is { Length: > 0 } chosen ? chosen : UsualCards,
                Units = parsed.GetValue(units),
            };
            var files = parsed.GetValue(book) ? [SheetSet.WriteBook(plan, options)] : SheetSet.Write(plan, options);
            Write(files, WrittenFiles.In(parsed.GetRequiredValue(output), parsed.GetValue(force)), host);
            return (int)Planner.Verdict(plan, host);
        });
        return command;
    }

    private static void Write(IReadOnlyList<SheetFile> files, WrittenFiles folder, CommandHost host)
    {
        foreach (var problem in files.SelectMany(file => file.Problems.Select(problem => $"{file.Name}: {problem}")))
        {
            host.Error.WriteLine($"does not fit: {problem}");
        }

        foreach (var path in folder.Write([.. files.Select(file => (file.Name, file.Content))]))
        {
            host.Output.WriteLine(path);
        }
    }

    private static Option<CardFormat[]> CardsOption()
    {
        var names = string.Join(", ", Formats.Keys);
        return new Option<CardFormat[]>("--cards")
        {
            Description = $"Sizes of card, one file each: {names}, or a size of your own such as \"90 mm x 130 mm\". A6 and 3x5in where left out.",
            HelpName = "size",
            AllowMultipleArgumentsPerToken = true,
            CustomParser = result => [.. result.Tokens.Select(token => Read(token.Value, names, result.AddError)).OfType<CardFormat>()],
        };
    }

    private static CardFormat? Read(string text, string names, Action<string> complain)
    {
        if (Formats.TryGetValue(text, out var format))
        {
            return format;
        }

        if (QuantityText.TrySize(text, out var width, out var height, out var problem))
        {
            return CardFormat.Custom(width.Millimeters, height.Millimeters);
        }

        complain($"--cards: '{text}' is neither one of {names} nor a size: {problem}");
        return null;
    }

    private static Option<DateOnly?> DateOption() => new("--date")
    {
        Description = "Date to print on every sheet, as year-month-day; none where left out, so that the same kit gives the same files.",
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
