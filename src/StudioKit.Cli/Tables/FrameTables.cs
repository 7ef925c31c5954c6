using System.Globalization;
using Spectre.Console;
using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>A frame, its cuts and its shopping list as tables on a terminal.</summary>
internal static class FrameTables
{
    public static void Write(IAnsiConsole console, FramePlan? frame, Workshop workshop)
    {
        if (frame is not null)
        {
            WritePieces(console, frame);
        }

        foreach (var upright in workshop.Uprights)
        {
            WriteUpright(console, upright);
        }

        WriteBars(console, workshop);
        WriteParts(console, workshop);
        WriteShopping(console, workshop);
    }

    private static void WriteUpright(IAnsiConsole console, UprightStandPlan upright)
    {
        var table = TableConsole.Table($"Upright sheet {Markup.Escape(upright.Name)}, pieces of pipe for one studio", "piece", "count", "cut to");
        foreach (var piece in upright.Pieces)
        {
            table.AddRow(Markup.Escape(piece.Label), Text(piece.Count), Exact(piece.Cut));
        }

        console.Write(table);
        console.WriteLine(
            $"{string.Concat(upright.Fittings.Select(fitting => $"{fitting.Count} {fitting.Name}, "))}{upright.SheetClips} clips from sheet to pipe. "
            + $"Pipe and fittings {MeasureFormat.Mass(upright.CarrierMass)}, sheet {MeasureFormat.Mass(upright.SheetMass)}. {UprightWindText.Of(upright)}");
    }

    private static void WritePieces(IAnsiConsole console, FramePlan frame)
    {
        var table = TableConsole.Table("Frame, pieces of pipe for one studio", "piece", "count", "cut to", "labels");
        foreach (var piece in frame.Pieces)
        {
            table.AddRow(piece.Group, Text(piece.Count), Exact(piece.Rounded), string.Join(", ", piece.Members));
        }

        console.Write(table);
        console.WriteLine(
            $"{frame.PipeName}; {string.Join(", ", frame.Fittings.Select(fitting => $"{fitting.Count} {fitting.Name}"))}. "
            + $"Pipe and fittings {MeasureFormat.Mass(frame.Mass)}, all that stands {MeasureFormat.Mass(frame.StandingMass)}.");
    }

    private static void WriteBars(IAnsiConsole console, Workshop workshop)
    {
        var title = workshop.Studios == 1 ? "Bars to cut" : $"Bars to cut, for {workshop.Studios} studios";
        var table = TableConsole.Table(title, "bars", "length", "pieces, end of each from the squared end", "left over");
        foreach (var alike in workshop.PipeCuts.Bars.GroupBy(bar => bar.Pattern))
        {
            var bar = alike.First();
            table.AddRow(
                Text(alike.Count()),
                Markup.Escape(bar.StockLabel),
                string.Join(", ", bar.Marks.Select(mark => $"{mark.Label} to {Exact(mark.End)}")),
                Exact(bar.Offcut));
        }

        console.Write(table);
        console.WriteLine(Proof(workshop.PipeCuts.Proof));
    }

    private static void WriteParts(IAnsiConsole console, Workshop workshop)
    {
        var table = TableConsole.Table("Panel and sheet goods for one studio", "part", "from", "size", "count");
        foreach (var part in workshop.SheetParts)
        {
            table.AddRow(Markup.Escape(part.Purpose), Markup.Escape(part.Material), $"{Exact(part.Width)} × {Exact(part.Height)}", Text(part.Count));
        }

        console.Write(table);
        console.WriteLine(Proof(workshop.SheetCuts.Proof));
    }

    private static void WriteShopping(IAnsiConsole console, Workshop workshop)
    {
        var table = TableConsole.Table(
            workshop.Studios == 1 ? "Shopping" : $"Shopping, for {workshop.Studios} studios", "item", "count", $"each, {workshop.Currency}", $"all, {workshop.Currency}");
        foreach (var column in table.Columns.Skip(1))
        {
            column.RightAligned();
        }

        foreach (var line in workshop.Shopping.Where(line => !line.IsFromTheHouse))
        {
            table.AddRow(Markup.Escape(line.Item), Text(line.Count), Money(line.PriceEach), Money(line.Total));
        }

        table.AddRow(workshop.TotalCost is null ? "in all: some prices are missing" : "in all", "", "", Money(workshop.TotalCost));
        console.Write(table);
        console.WriteLine($"From the house, or bought: {string.Join("; ", workshop.Shopping.Where(line => line is { IsFromTheHouse: true, Tool: null }).Select(line => line.Count == 1 ? line.Item : $"{line.Count} × {line.Item}"))}.");
        console.WriteLine($"Tools: {string.Join(", ", workshop.Tools.Select(ToolText.Name))}.");
    }

    private static string Proof(CutProof proof) => proof switch
    {
        { ProvenOptimal: true } => $"Proven: no plan can be better ({proof.Method}).",
        { Gap: { } gap } => $"At most {MeasureFormat.Percent((double)gap)} above the best plan ({proof.Method}).",
        _ => $"Not every piece can be cut ({proof.Method}).",
    };

    // A cut is marked to the half millimetre, so it is printed to the tenth whatever its size.
    private static string Exact(UnitsNet.Length length) => $"{length.Millimeters.ToString("0.#", CultureInfo.InvariantCulture)} mm";

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Money(decimal? price) => price?.ToString("0.00", CultureInfo.InvariantCulture) ?? "?";
}
