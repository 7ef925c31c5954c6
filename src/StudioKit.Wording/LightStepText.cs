using StudioKit.Planning;
using StudioKit.Planning.Advising;

namespace StudioKit.Wording;

/// <summary>What to set in another light of the place, in words; all of it from the plan of that light.</summary>
public static class LightStepText
{
    /// <summary>What is done then.</summary>
    /// <param name="now">The exposure as it is set.</param>
    /// <param name="step">The other light.</param>
    /// <param name="inShort">Powers as one fraction, where room is short.</param>
    public static string Then(ExposurePlan now, LightStep step, bool inShort = false)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(step);
        var promise = step.Advice.Promise;
        var edge = promise.Verdict.Verdict == Verdict.AtTheEdge && !step.IsPlanned ? ", at the edge" : "";
        var steadied = step.Steadied is { } steady ? $"; {AdviceText.Of(now, steady, inShort)}" : "";
        return step.IsPlanned ? $"this card{steadied}"
            : promise.IsUsable ? AdviceText.Of(now, step.Advice, inShort) + edge + steadied
            : step.Steadied is { } only ? AdviceText.Of(now, only, inShort)
            : step.Shade is { } shade ? $"shade by {AdviceText.Amount(shade)}"
            : promise.Verdict.Binding is { } limit ? LimitText.Of(limit) : "";
    }
}
