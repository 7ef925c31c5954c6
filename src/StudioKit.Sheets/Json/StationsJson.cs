using StudioKit.Kits;
using StudioKit.Planning.Stations;

namespace StudioKit.Sheets.Json;

/// <summary>What several studios share, as JSON.</summary>
public static class StationsJson
{
    /// <summary>The whole plan.</summary>
    /// <param name="json">The document.</param>
    /// <param name="plan">The plan.</param>
    public static void Write(JsonReport json, StationsPlan plan)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(plan);
        json.Texts("stations", plan.Stations)
            .Text("currency", plan.Currency)
            .Amount("saved", plan.Saved)
            .List("cuts", plan.Cuts, cut =>
            {
                json.Text("material", cut.Material).Texts("stations", cut.Stations);
                Taken(json, "apart", cut.Apart);
                Taken(json, "together", cut.Together);
                json.Flag("proven", cut.IsProven);
            })
            .List("tools", plan.Tools, tool => json.Text("tool", MemberText.Of(tool.Tool.Kind)).Millimetres("size", tool.Tool.Size).Texts("stations", tool.Stations))
            .List("alike", plan.Alike, piece => json.Text("material", piece.Material).Millimetres("length", piece.Length).Millimetres("width", piece.Width).Texts("stations", piece.Stations).Count("fewest", piece.Fewest))
            .List("channels", plan.Channels, clash => json.Count("channel", clash.Channel).Texts("stations", clash.Stations).Numbers("free", clash.Free.Select(channel => (double)channel)));
    }

    private static void Taken(JsonReport json, string key, StockTaken taken) => json.Section(key, () => json.Count("count", taken.Count).Amount("cost", taken.Cost));
}
