using StudioKit.Kits.Lighting;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.SetUps;
using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Field;

/// <summary>Finds what in a plan a person means, and says what there is where they named nothing of it.</summary>
/// <param name="plan">The plan.</param>
/// <param name="place">Where the names were written, for the report.</param>
public sealed class PlanSearch(Plan plan, string place)
{
    // A lens's focal length is rounded on the barrel and in the file alike.
    private const double FocalLengthTolerance = 0.03;

    /// <summary>A set-up that lights the panel from below, or an upright sheet from behind, at a framing and a camera pitch.</summary>
    /// <param name="setUp">Name of the set-up; the only one where it is empty.</param>
    /// <param name="framing">Name of the framing; the only one where it is empty.</param>
    /// <param name="pitch">Camera pitch; the only one where there is none.</param>
    /// <param name="focalLength">Focal length that a file names, which may tell the framing; none where it is not known.</param>
    public FieldResult<PlanPlace> Frame(string setUp, string framing, Angle? pitch, Length? focalLength = null)
    {
        var panel = Sheet(setUp);
        if (!panel.IsSound)
        {
            return panel;
        }

        var name = FramingOf(panel.Value.SetUp.Name, framing, focalLength, out var fault);
        return name is null ? fault! : WithPitch(panel.Value with { Framing = name }, pitch);
    }

    /// <summary>A set-up that lights the panel from below, or an upright sheet from behind, at a framing, where the camera pitch does not matter.</summary>
    /// <inheritdoc cref="Frame" path="/param"/>
    public FieldResult<PlanPlace> FrameAtAnyPitch(string setUp, string framing, Length? focalLength)
    {
        var panel = Sheet(setUp);
        if (!panel.IsSound)
        {
            return panel;
        }

        return FramingOf(panel.Value.SetUp.Name, framing, focalLength, out var fault) is { } name ? panel.Value with { Framing = name } : fault!;
    }

    /// <summary>A set-up that lights the panel from below, with its flash below.</summary>
    /// <param name="setUp">Name of the set-up; the only one where it is empty.</param>
    public FieldResult<PlanPlace> Panel(string setUp)
    {
        var lit = plan.Kit.SetUps.Where(candidate => Below(candidate) is not null).ToList();
        if (lit.Count == 0)
        {
            return new FieldDiagnostic("FLD206", place, "No set-up of the kit lights the panel from below.");
        }

        var found = Named("set-up", setUp, lit, candidate => candidate.Name, out var fault);
        return found is null ? fault! : new PlanPlace(found, Below(found)!, "", found.CameraPitches[0]);
    }

    // One reading tells of one sheet: where the panel and a sheet behind the subject share the frame, each with its own flash, it cannot be told whose light a place shows.
    private FieldResult<PlanPlace> Sheet(string setUp)
    {
        var lit = plan.Kit.SetUps.Where(candidate => OfSheet(candidate) is not null).ToList();
        if (lit.Count == 0)
        {
            return new FieldDiagnostic("FLD206", place, "No set-up of the kit lights the panel from below.");
        }

        var single = lit.Where(candidate => !ShowsTwo(candidate)).ToList();
        if (lit.FirstOrDefault(candidate => ShowsTwo(candidate) && (candidate.Name == setUp || single.Count == 0)) is { } both)
        {
            return new FieldDiagnostic(
                "FLD231", place, $"A frame of '{both.Name}' shows the panel and the sheet behind the subject, each lit by its own flash.", "Take the frame of a set-up that shows one of them alone.");
        }

        var found = Named("set-up", setUp, single, candidate => candidate.Name, out var fault);
        return found is null ? fault! : new PlanPlace(found, OfSheet(found)!, "", found.CameraPitches[0]);
    }

    /// <summary>A flash in any set-up; standing bare by itself where no set-up uses it.</summary>
    /// <param name="setUp">Name of the set-up; empty where all that use the flash have the same before it.</param>
    /// <param name="flash">Name of the flash.</param>
    public FieldResult<PlanPlace> Flash(string setUp, string flash)
    {
        var spec = Named("flash", flash, plan.Kit.Flashes, candidate => candidate.Name, out var fault);
        if (spec is null)
        {
            return fault!;
        }

        var users = plan.Kit.SetUps.Where(candidate => candidate.Lights.Any(light => light.Flash == spec.Name)).ToList();
        if (setUp.Length == 0 && users.Count == 0)
        {
            return new FieldDiagnostic("FLD206", place, $"No set-up uses the flash '{spec.Name}'.");
        }

        if (setUp.Length == 0 && users.Select(user => Before(spec, user)).Distinct().Count() > 1)
        {
            return new FieldDiagnostic(
                "FLD220",
                place,
                $"Which set-up? They have different things before the flash '{spec.Name}', which a meter tells.",
                $"Name one under set-up: {string.Join(", ", users.Select(user => $"{user.Name} ({(Before(spec, user).Modifier is { Length: > 0 } modifier ? modifier : "bare")})"))}");
        }

        var found = setUp.Length == 0 ? users[0] : Named("set-up", setUp, users, candidate => candidate.Name, out fault);
        return found is null ? fault! : new PlanPlace(found, found.Lights.First(light => light.Flash == spec.Name), "", found.CameraPitches[0]);
    }

    /// <summary>A flash that lights the subject, with a framing.</summary>
    /// <param name="setUp">Name of the set-up; empty where all that use the flash have the same before it.</param>
    /// <param name="framing">Name of the framing; the only one where it is empty.</param>
    /// <param name="flash">Name of the flash.</param>
    public FieldResult<PlanPlace> Card(string setUp, string framing, string flash)
    {
        var found = Flash(setUp, flash);
        if (!found.IsSound)
        {
            return found;
        }

        return FramingOf(found.Value.SetUp.Name, framing, null, out var fault) is { } name ? found.Value with { Framing = name } : fault!;
    }

    // What spreads and weakens a flash in a set-up.
    private static (string Modifier, Length? Zoom) Before(FlashSpec flash, SetUpSpec setUp)
    {
        var light = setUp.Lights.First(candidate => candidate.Flash == flash.Name);
        return (light.Modifier ?? "", light.Zoom ?? flash.Zoom ?? flash.GuideNumber.Zoom);
    }

    private static bool ShowsTwo(SetUpSpec setUp) => setUp.Upright is not null && !setUp.IsBeforeUpright;

    private static LightSpec? OfSheet(SetUpSpec setUp) => setUp.Lights.FirstOrDefault(light => light.Role.IsBackground());

    private static LightSpec? Below(SetUpSpec setUp) => setUp.Lights.FirstOrDefault(light => light.Role == LightRole.Below);

    private string? FramingOf(string setUp, string framing, Length? focalLength, out FieldDiagnostic? fault)
    {
        var planned = plan.Exposures.Where(exposure => exposure.SetUp == setUp).Select(exposure => exposure.Framing).ToList();
        var fitting = framing.Length == 0 && focalLength is { } focal ? planned.Where(candidate => Fits(candidate, focal)).ToList() : planned;
        return Named("framing", framing, fitting.Count == 0 ? planned : fitting, candidate => candidate.Name, out fault)?.Name;
    }

    /// <summary>Whether a picture of a focal length can be of a framing.</summary>
    /// <param name="framing">The framing.</param>
    /// <param name="focalLength">Focal length that the file names.</param>
    public bool Fits(FramingPlan framing, Length focalLength) =>
        plan.Kit.Lenses.Any(lens => lens.Name == framing.Lens && Math.Abs((lens.FocalLength / focalLength) - 1) <= FocalLengthTolerance);

    private FieldResult<PlanPlace> WithPitch(PlanPlace found, Angle? pitch)
    {
        var pitches = found.SetUp.CameraPitches;
        if (pitch is null && pitches.Count > 1)
        {
            return new FieldDiagnostic(
                "FLD208", place, "Which camera pitch?", $"The set-up '{found.SetUp.Name}' has: {string.Join(", ", pitches.Select(MeasureFormat.Degrees))}");
        }

        return found with { Pitch = pitch ?? pitches[0] };
    }

    private T? Named<T>(string what, string name, IReadOnlyList<T> all, Func<T, string> nameOf, out FieldDiagnostic? fault)
        where T : class
    {
        var names = string.Join(", ", all.Select(nameOf));
        var found = name.Length == 0 && all.Count == 1 ? all[0] : all.FirstOrDefault(candidate => nameOf(candidate) == name);
        var nearest = NearestName.Of(name, all.Select(nameOf));
        fault = found is not null
            ? null
            : name.Length == 0
                ? new FieldDiagnostic("FLD207", place, $"Which {what}?", all.Count == 0 ? $"The plan has no {what} for this." : $"There are: {names}")
                : new FieldDiagnostic("FLD206", place, $"The kit has no {what} '{name}' for this.", nearest is null ? $"There are: {names}" : $"Did you mean '{nearest}'?");
        return found;
    }
}
