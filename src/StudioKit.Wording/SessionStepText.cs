using StudioKit.Planning;
using StudioKit.Planning.Session;

namespace StudioKit.Wording;

/// <summary>Steps of a session as sentences.</summary>
public static class SessionStepText
{
    /// <summary>The step, without what is tested in it.</summary>
    /// <param name="step">The step.</param>
    public static string Of(SessionStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Kind switch
        {
            SessionStepKind.SettingUp => $"Set up for {step.SetUp}, {step.Framing}.",
            SessionStepKind.Changing => $"Change to {step.SetUp}, {step.Framing}{Waiting(step)}.",
            SessionStepKind.Reframing => $"Change to {step.Framing}{Waiting(step)}.",
            SessionStepKind.Sheltering => ShelterText.Step(step),
            SessionStepKind.SettingTriggers => FiringText.Step(step.Fired),
            SessionStepKind.StandingSheet when step.Upright is { WhereItGrows: true } sheet =>
                $"Stand the {sheet.Name} {DistanceFormat.Centimetres(sheet.Behind)} behind the {step.Subject}, square to the view. Bend its neighbours aside with a soft cord, break and tread on none, and let no stem stand between.",
            SessionStepKind.StandingSheet when step.Upright is { } sheet => $"Stand the {sheet.Name} {DistanceFormat.Centimetres(sheet.Behind)} behind where the {step.Subject} will be, square to the view.",
            SessionStepKind.TurningPolariser => "Turn the polariser until the shine on a wet leaf goes, and leave it so.",
            SessionStepKind.Testing => $"Test object first: a twig {PlanFormat.Millimetres(step.SubjectLength)} long{Covered(step)}.",
            SessionStepKind.Settling when step.Cover is { HoldsWater: true } tank => $"Let the {step.Subject} swim into the {tank.Name}, in fresh water of its own pond, and settle.",
            SessionStepKind.Settling when step.Cover is { } cover => $"Fetch the {step.Subject}; turn the {cover.Name} over it and let it settle.",
            SessionStepKind.Settling => $"Fetch the {step.Subject}; let it settle {(step.OnPanel ? "on the sheet" : "where it is to be photographed")}.",
            SessionStepKind.Shooting => $"{(step.Cover is { Lifted: true } cover ? $"Lift the {cover.Name} and photograph" : "Photograph")} the {step.Subject}{(step.WhereItSits ? " where it sits" : "")}: {Frames(step)}.",
            _ => $"Let the {step.Subject} go where it was found.",
        };
    }

    private static string Covered(SessionStep step) => step.Cover switch
    {
        null or { Lifted: true } => "",
        { HoldsWater: true } tank => $", in the {tank.Name}, filled from the animal's own pond and wiped dry outside",
        var cover => $", under the {cover.Name}",
    };

    private static string Waiting(SessionStep step) => step.Held ? $"; the {step.Subject} waits in its tub in the shade" : "";

    private static string Frames(SessionStep step)
    {
        var stacked = step.StackFrames > 0 ? FormattableString.Invariant($", then a focus stack of {step.StackFrames}") : "";
        return FormattableString.Invariant($"{step.Frames - step.StackFrames} frames{stacked}");
    }
}
