using StudioKit.Physics;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Stations;

/// <summary>Plans of several kits → what their studios share.</summary>
public static class StationsPlanner
{
    // Cuts are marked to half a millimetre, so pieces that differ by less are the same.
    private const double SameMillimetres = 0.5;

    /// <summary>Works out what the studios share.</summary>
    /// <param name="plans">Their plans, at least two; a kit that is built twice stands in it twice.</param>
    /// <param name="services">Cut planners.</param>
    /// <exception cref="ArgumentException">There are fewer than two plans.</exception>
    public static StationsPlan Of(IReadOnlyList<Plan> plans, PlanningServices services)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(services);
        if (plans.Count < 2)
        {
            throw new ArgumentException("One studio shares with nobody.", nameof(plans));
        }

        List<Station> stations = [.. plans.Select((plan, place) => new Station(StationNames.Of(plans, place), plan))];
        var currencies = plans.Select(plan => plan.Kit.Stock.Currency).Distinct(StringComparer.Ordinal).ToList();
        return new StationsPlan
        {
            Stations = Names(stations),
            Currency = currencies.Count == 1 ? currencies[0] : null,
            Cuts = [.. Pipes(stations, services), .. Sheets(stations, services)],
            Tools = [.. Tools(stations)],
            Alike = [.. AlikePipes(stations), .. AlikeSheets(stations)],
            Channels = [.. Channels(stations)],
        };
    }

    private static ValueList<string> Names(IEnumerable<Station> stations) => [.. stations.Select(station => station.Name)];

    private static IEnumerable<CutTogether> Pipes(List<Station> stations, PlanningServices services) =>
        from pipe in stations.Where(station => station.Plan.Workshop is not null).GroupBy(station => station.Plan.Workshop!.PipeName)
        where pipe.Count() > 1
        let requests = pipe.Select(station => WorkshopPlanner.BarRequest(station.Plan.Kit, station.Plan.Frame?.Pieces ?? [], station.Plan.Workshop!.Uprights)).Where(request => request.Pieces.Count > 0).ToList()
        where requests.Count > 1
        let apart = pipe.Select(station => station.Plan.Workshop!.PipeCuts).ToList()
        let together = services.Bars.Plan(Joined(requests))
        select Cheaper(
            pipe.Key, Names(pipe), new StockTaken(apart.Sum(plan => plan.TotalBars), apart.TrueForAll(plan => plan.Complete) ? apart.Sum(plan => plan.TotalCost) : null),
            new StockTaken(together.TotalBars, together.Complete ? together.TotalCost : null), together.Proof.ProvenOptimal);

    private static IEnumerable<CutTogether> Sheets(List<Station> stations, PlanningServices services) =>
        from sheet in stations.Where(station => station.Plan.Workshop is not null)
            .SelectMany(station => SheetCuts.FromStock(station.Plan.Kit, station.Plan.Panel, station.Plan.Workshop!.SheetParts).Select(request => (Station: station, request.Material, request.Request)))
            .GroupBy(of => of.Material)
        where sheet.Count() > 1
        let apart = sheet.Select(of => services.Sheets.Plan(of.Request)).ToList()
        let together = services.Sheets.Plan(Joined([.. sheet.Select(of => of.Request)]))
        select Cheaper(
            sheet.Key, Names(sheet.Select(of => of.Station)), new StockTaken(apart.Sum(plan => plan.TotalSheets), apart.TrueForAll(plan => plan.Complete) ? apart.Sum(plan => plan.TotalCost) : null),
            new StockTaken(together.TotalSheets, together.Complete ? together.TotalCost : null), together.Proof.ProvenOptimal);

    // Each for itself is a plan for all too.
    private static CutTogether Cheaper(string material, ValueList<string> stations, StockTaken apart, StockTaken together, bool isProven) =>
        together.Cost is { } cost && apart.Cost is { } alone && cost > alone ? new(material, stations, apart, apart, false) : new(material, stations, apart, together, isProven);

    // All that is on hand goes together; what is bought of one size at one price is bought as often as needed.
    private static BarCutRequest Joined(List<BarCutRequest> requests) => new()
    {
        Pieces = [.. requests.SelectMany(request => request.Pieces).GroupBy(piece => (piece.Label, piece.Length)).Select(alike => alike.First() with { Count = alike.Sum(piece => piece.Count) })],
        Stock = [.. requests.SelectMany(request => request.Stock).GroupBy(bar => (bar.Length, bar.Price, Counted: bar.Count is not null))
            .Select(alike => alike.First() with { Count = alike.Key.Counted ? alike.Sum(bar => bar.Count) : null })],
        Kerf = requests.Select(request => request.Kerf).Max(),
        Trim = requests.Select(request => request.Trim).Max(),
    };

    private static SheetCutRequest Joined(List<SheetCutRequest> requests) => new()
    {
        Pieces = [.. requests.SelectMany(request => request.Pieces).GroupBy(piece => (piece.Label, piece.Width, piece.Height, piece.MayTurn)).Select(alike => alike.First() with { Count = alike.Sum(piece => piece.Count) })],
        Stock = [.. requests.SelectMany(request => request.Stock).GroupBy(sheet => (sheet.Width, sheet.Height, sheet.Price, Counted: sheet.Count is not null))
            .Select(alike => alike.First() with { Count = alike.Key.Counted ? alike.Sum(sheet => sheet.Count) : null })],
        Kerf = requests.Select(request => request.Kerf).Max(),
    };

    private static IEnumerable<SharedTool> Tools(List<Station> stations) =>
        from tool in stations.SelectMany(station => (station.Plan.Workshop?.Tools ?? []).Select(tool => (Station: station, Tool: tool))).GroupBy(of => (of.Tool.Kind, of.Tool.Size))
        where tool.Count() > 1
        orderby tool.Key.Kind
        select new SharedTool(tool.First().Tool, Names(tool.Select(of => of.Station)));

    private static IEnumerable<AlikePiece> AlikePipes(List<Station> stations) =>
        from piece in stations.SelectMany(station => (station.Plan.Frame?.Pieces ?? []).Select(piece => (Station: station, Pipe: station.Plan.Frame!.PipeName, piece.Rounded, piece.Count)))
            .GroupBy(of => (of.Pipe, Steps: Math.Round(of.Rounded.Millimeters / SameMillimetres)))
        let having = piece.GroupBy(of => of.Station.Name).ToList()
        where having.Count > 1
        orderby piece.Key.Pipe, piece.Key.Steps descending
        select new AlikePiece(piece.Key.Pipe, piece.First().Rounded, null, [.. having.Select(of => of.Key)], having.Min(of => of.Sum(same => same.Count)));

    private static IEnumerable<AlikePiece> AlikeSheets(List<Station> stations) =>
        from part in stations.SelectMany(station => (station.Plan.Workshop?.SheetParts ?? []).Select(part => (Station: station, Part: part, Sides: SidesOf(part))))
            .GroupBy(of => (of.Part.Material, Long: Math.Round(of.Sides.Long.Millimeters / SameMillimetres), Short: Math.Round(of.Sides.Short.Millimeters / SameMillimetres)))
        let having = part.GroupBy(of => of.Station.Name).ToList()
        where having.Count > 1
        orderby part.Key.Material, part.Key.Long descending
        select new AlikePiece(part.Key.Material, part.First().Sides.Long, part.First().Sides.Short, [.. having.Select(of => of.Key)], having.Min(of => of.Sum(same => same.Part.Count)));

    private static (Length Long, Length Short) SidesOf(SheetPart part) => part.Width > part.Height ? (part.Width, part.Height) : (part.Height, part.Width);

    private static IEnumerable<ChannelClash> Channels(List<Station> stations)
    {
        var used = stations.SelectMany(station => station.Plan.Kit.Triggers.Where(trigger => trigger.IsRadio).Select(trigger => trigger.Channel).OfType<int>().Distinct().Select(channel => (Station: station, Channel: channel))).ToList();
        var taken = used.Select(of => of.Channel).ToHashSet();
        foreach (var clash in used.GroupBy(of => of.Channel).Where(of => of.Count() > 1).OrderBy(of => of.Key))
        {
            List<int> free = [.. Enumerable.Range(1, int.MaxValue - 1).Where(channel => !taken.Contains(channel)).Take(clash.Count() - 1)];
            taken.UnionWith(free);
            yield return new ChannelClash(clash.Key, Names(clash.Select(of => of.Station)), [.. free]);
        }
    }

    private sealed record Station(string Name, Plan Plan);
}
