using StudioKit.Kits.Shelters;
using StudioKit.Planning;
using StudioKit.Planning.Session;

namespace StudioKit.Wording;

/// <summary>What is put up against sun and wind, in words.</summary>
public static class ShelterText
{
    /// <summary>Behind the light that an exposure is made for; empty where nothing shades.</summary>
    /// <param name="exposure">The exposure.</param>
    /// <exception cref="ArgumentNullException">There is no exposure.</exception>
    public static string Behind(ExposurePlan exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        var shades = exposure.Shelters.Where(shelter => shelter.Kind != ShelterKind.WindBreak).Select(shelter => $"the {shelter.Name}").ToList();
        return shades.Count == 0 ? "" : FormattableString.Invariant(
            $", {exposure.ShelterLoss.Value:0.0} stops less under {string.Join(" and ", shades)}{(exposure.SunShare is > 0 and var sun ? $" ({MeasureFormat.Percent(Math.Round(sun, 2))} sun)" : "")}");
    }

    /// <summary>What is put up and taken down in a step of a session.</summary>
    /// <param name="step">The step.</param>
    /// <exception cref="ArgumentNullException">There is no step.</exception>
    public static string Step(SessionStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return string.Join(' ', step.TakenDown.Select(name => $"Take down the {name}.").Concat(step.PutUp.Select(PutUp)));
    }

    private static string PutUp(ShelterPlan shelter) => shelter.Kind == ShelterKind.WindBreak
        ? $"Put up the {shelter.Name} on the windward side, {DistanceFormat.Centimetres(shelter.Distance)} from the subject{(shelter.Held ? ", held" : ", pegged and guyed")}."
        : $"{(shelter.Held ? "Somebody holds" : "Put up")} the {shelter.Name} {DistanceFormat.Centimetres(shelter.Distance)} over the subject{Towards(shelter)}.";

    private static string Towards(ShelterPlan shelter) => shelter.Sunward is { Centimeters: >= 0.5 } by ? $", {DistanceFormat.Centimetres(by)} towards the sun" : ", its shadow on it";
}
