using StudioKit.Kits;
using StudioKit.Physics.Sources;
using StudioKit.Planning.Cautions;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>A caution of a plan as JSON.</summary>
internal static class CautionJson
{
    public static void Write(JsonReport json, PlanCaution caution)
    {
        json.Text("kind", MemberText.Of(caution.Kind))
            .Text("title", CautionText.Title(caution))
            .Text("text", CautionText.Of(caution))
            .Texts("sheets", caution.Sheets.Select(sheet => MemberText.Of(sheet)))
            .Texts("groups", caution.Groups.Select(group => MemberText.Of(group)))
            .Texts("subjects", caution.Subjects)
            .List("flashes", caution.Flashes, flash => json
                .Text("flash", flash.Flash)
                .Texts("setUps", flash.SetUps)
                .Millimetres("belowPanel", flash.BelowPanel)
                .Text("support", flash.Support is { } support ? MemberText.Of(support) : null))
            .Text("material", caution.Material)
            .Texts("harmedBy", caution.Harms.Select(harm => MemberText.Of(harm)))
            .Flag("bent", caution.Bent)
            .Count("pegs", caution.Pegs)
            .Flag("guys", caution.Guys)
            .Texts("shelters", caution.Shelters.Select(shelter => shelter.Name))
            .List("channels", caution.Channels, channel => json.Count("channel", channel))
            .Number("dayS", caution.Day?.Seconds)
            .Number("airCelsius", caution.Air?.DegreesCelsius)
            .Texts("sources", caution.Sources.Select(source => Bibliography.Cite(source.Key, source.Locator)));
    }
}
