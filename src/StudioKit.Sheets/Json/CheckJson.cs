using StudioKit.Kits;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Sheets.Json;

/// <summary>A check as JSON: its kind and parts, its amounts as numbers, and the words that sheets print.</summary>
internal static class CheckJson
{
    /// <summary>Writes one check.</summary>
    public static void Write(JsonReport json, PlanCheck check, Plan plan)
    {
        json.Text("name", CheckText.Name(check))
            .Text("kind", MemberText.Of(check.Kind))
            .Texts("parts", check.Parts)
            .Flag("passed", check.Passed)
            .Text("demand", CheckText.Demand(check))
            .Text("capacity", CheckText.Capacity(check));
        Write(json, "demand", check.Demand);
        Write(json, "capacity", check.Capacity);
        if (check.Loads.Count > 0)
        {
            json.List("loads", check.Loads, load => Write(json.Text("kind", MemberText.Of(load.Kind)), "load", load.Value));
        }

        json.Number("ratio", check.Ratio)
            .Text("source", Bibliography.Cite(check.SourceKey, CheckText.Locator(check)))
            .List("findings", check.Findings, finding => FindingJson.Write(json, finding))
            .Text("remedy", CheckText.Remedy(check));
        Write(json, check.Remedy);
        if (!check.Passed)
        {
            json.List("keys", CheckKeys.Of(check, plan), key => json.Text("path", key.Path).Text("value", key.Value).Text("takenAs", key.Standing));
        }

        json.List("caveats", check.Caveats, caveat => CaveatJson.Write(json, caveat));
    }

    private static void Write(JsonReport json, CheckRemedy? remedy)
    {
        if (remedy is null)
        {
            return;
        }

        json.Text("remedyKind", MemberText.Of(remedy.Kind)).Texts("remedyParts", remedy.Parts).Texts("remedyKeys", remedy.Keys);
        Write(json, "remedy", remedy.Amount);
    }

    private static JsonReport Write(JsonReport json, string key, CheckAmount amount) => amount switch
    {
        CheckAmount.Measure quantity => Write(json, key, quantity.Value),
        CheckAmount.HowMany count => json.Count(key + "Count", count.Value),
        CheckAmount.Portion share => json.Number(key + "Share", share.Value),
        CheckAmount.TwoSides sides => json.Millimetres(key + "Width", sides.Width).Millimetres(key + "Depth", sides.Depth),
        CheckAmount.Enlargement enlargement => json.Number(key + "Magnification", enlargement.Value.Value),
        CheckAmount.KnownTo known => json.Stops(key + "Within", known.Within).Millimetres(key + "Zoom", known.Zoom),
        CheckAmount.LongRoom room => json.Millimetres(key + "Longest", room.Longest),
        CheckAmount.BagFill fill => json.Number(key + "Share", fill.Filled),
        CheckAmount.OnBody burden => json.Grams(key, burden.Mass).Number(key + "ShareOfBody", burden.ShareOfBody),
        CheckAmount.CellSets cells => json.Count(key + "Sets", cells.Sets).Count(key + "Flashes", cells.Flashes),
        CheckAmount.AddedBallast ballast => json.Grams(key + "UnderMiddle", ballast.UnderMiddle).Grams(key + "OnWindwardFeet", ballast.OnWindwardFeet),
        CheckAmount.Angles angles => json.List(key + "Angles", angles.Ranges, range => json.Number("fromDeg", range.From.Degrees).Number("toDeg", range.To.Degrees)),
        CheckAmount.Dimmed dimmed => json.Number(key + "Stops", dimmed.Stops),
        CheckAmount.Directed directed => json.Number(key + "AzimuthDeg", directed.From.Azimuth.Degrees).Number(key + "ElevationDeg", directed.From.Elevation.Degrees),
        CheckAmount.NearestMoves moves => json.List(key + "Moves", moves.Choices, move => FindingJson.Write(json, move)),
        _ => json,
    };

    private static JsonReport Write(JsonReport json, string key, IQuantity quantity) => quantity switch
    {
        Length length => json.Millimetres(key, length),
        Duration duration => json.Number(key + "S", duration.Seconds),
        Mass mass => json.Grams(key, mass),
        Pressure pressure => json.Number(key + "Pa", pressure.Pascals),
        Force force => json.Number(key + "N", force.Newtons),
        Speed speed => json.Number(key + "MPerS", speed.MetersPerSecond),
        Torque torque => json.Number(key + "Nm", torque.NewtonMeters),
        Temperature temperature => json.Number(key + "DegC", temperature.DegreesCelsius),
        TemperatureDelta difference => json.Number(key + "K", difference.Kelvins),
        Ratio ratio => json.Number(key + "Ratio", ratio.DecimalFractions),
        _ => json,
    };
}
