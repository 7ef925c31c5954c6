using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.SetUps;

/// <summary>One way of lighting: its lights in order, how it is solved and judged, and what to try and turn. Each has a folder of its own.</summary>
internal abstract class SetUpPlanner
{
    private const double HalfStop = 0.5;

    /// <summary>Whether it lights the panel from below, and so asks for a panel, a frame and a place for the flash.</summary>
    public virtual bool LightsPanel => false;

    /// <summary>Whether it lights a sheet at all, the panel or one that stands behind the subject.</summary>
    public virtual bool LightsSheet => LightsPanel;

    /// <summary>Whether its habitat is behind the subject, exposed by the light of the place.</summary>
    public virtual bool ShowsHabitat => false;

    /// <summary>Whether the subject is photographed where it sits or grows.</summary>
    public virtual bool WhereItSits => false;

    /// <summary>Roles on the subject, the leading one first: what that gives is the main light.</summary>
    protected abstract IReadOnlyList<LightRole> RolesOnSubject { get; }

    /// <summary>The lights in the order in which a solution gives them; what this way of lighting has no use for is left out.</summary>
    public virtual IReadOnlyList<LightSpec> InOrder(SetUpSpec setUp) => [.. RolesOnSubject.SelectMany(role => setUp.LightsOf(role))];

    /// <summary>Lights that fire along at the power of another and are not solved for.</summary>
    public virtual IEnumerable<LightSpec> Alongside(SetUpSpec setUp) => [];

    /// <summary>How to see that it works, before the animal comes out of its box.</summary>
    public abstract IEnumerable<TestStep> TestSteps(SetUpSpec setUp);

    /// <summary>Finds the settings.</summary>
    public abstract SetUpResult Solve(SetUpAtFraming at);

    /// <summary>What may be seen on its frames, and what may help.</summary>
    public abstract IEnumerable<SymptomRule> Symptoms(SetUpSpec setUp, ExposurePlan now);

    /// <summary>How likely the first frame is right.</summary>
    /// <param name="at">The set-up at its framing.</param>
    /// <param name="result">The exposure found.</param>
    /// <param name="uncertainty">One standard deviation of what the set-up aims at.</param>
    /// <returns>A verdict of which the probabilities alone count.</returns>
    public abstract ExposureVerdict Chances(SetUpAtFraming at, SetUpResult result, Stops uncertainty);

    /// <summary>One standard deviation of what the set-up aims at.</summary>
    /// <param name="result">The exposure found.</param>
    /// <param name="main">Account of the main flash.</param>
    /// <param name="ambient">One standard deviation of the ambient light.</param>
    public abstract Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient);

    /// <summary>How likely a level comes within half a stop of right, which is taken back in raw development unseen (common practice, no source) [1].</summary>
    protected static double NearEnough(Stops level, Stops uncertainty) =>
        Likelihood.Between(level, level, new Stops(-HalfStop), new Stops(HalfStop), uncertainty);

    /// <summary>The lights on the subject; those of the leading role share the main level, those of a later role fill at the set-up's fill level.</summary>
    protected IReadOnlyList<SubjectLight> OnSubject(SetUpAtFraming at)
    {
        var lights = RolesOnSubject.SelectMany(role => at.SetUp.LightsOf(role)).ToList();
        return [.. lights.Select(light => new SubjectLight(at.Flash(light), light.Role == lights[0].Role ? default : at.FillLevel))];
    }
}
