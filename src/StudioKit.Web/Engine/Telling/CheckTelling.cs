using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Mending;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Tells a check.</summary>
internal static class CheckTelling
{
    /// <summary>A check as the page lists it.</summary>
    public static CheckLine Of(PlanCheck check, Plan plan) => new(
        CheckText.Name(check), check.Passed, CheckText.Demand(check), CheckText.Capacity(check),
        CheckText.Remedy(check), CheckText.Keys(check, plan), Bibliography.Cite(check.SourceKey, CheckText.Locator(check)))
    {
        Id = Id(check),
        Places = Places(check, plan),
    };

    /// <summary>Fields that decide a check that fails, or that holds at the edge.</summary>
    public static IReadOnlyList<FieldPlace> Places(PlanCheck check, Plan plan) =>
        [.. CheckKeys.Of(check.Passed && check.Findings.Count > 0 ? check with { Passed = false } : check, plan).SelectMany(key => PlaceTelling.Of(key, check, plan)).DistinctBy(place => place.Path)];

    /// <summary>What a check is known by in every plan of a kit.</summary>
    public static string Id(PlanCheck check) =>
        string.Join('/', [check.Kind.ToString(), .. CheckLikeness.About(check), .. CheckLikeness.GoesByDemand(check) ? (string[])[CheckText.Demand(check)] : []]);
}
