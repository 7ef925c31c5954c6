using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Features;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Handling;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning;

/// <summary>Everything that StudioKit worked out from a kit; all that is printed, drawn or exported is read from here.</summary>
public sealed record Plan
{
    /// <summary>The kit as it was read, defaults filled in.</summary>
    public required KitSpec Kit { get; init; }

    /// <summary>Short hash of the kit's content, printed on every sheet.</summary>
    public required string ContentHash { get; init; }

    /// <summary>Each lens combination at each magnification, in order of magnification.</summary>
    public required IReadOnlyList<FramingPlan> Framings { get; init; }

    /// <summary>The panel.</summary>
    public required PanelPlan Panel { get; init; }

    /// <summary>The sheets that stand behind subjects, each that a set-up uses.</summary>
    public ValueList<UprightPlan> Uprights { get; init; } = [];

    /// <summary>Light on the upright sheets, one for each set-up that has one.</summary>
    public ValueList<UprightLightPlan> UprightLights { get; init; } = [];

    /// <summary>Light on the panel, one for each white-background set-up.</summary>
    public IReadOnlyList<PanelLightPlan> PanelLights { get; init; } = [];

    /// <summary>Light on every sheet, the panel's first, one for each set-up that it is lit in.</summary>
    public IEnumerable<PanelLightPlan> SheetLights => PanelLights.Concat(UprightLights.Select(light => light.Sheet));

    /// <summary>Starting exposures, one for each framing of each set-up.</summary>
    public required IReadOnlyList<ExposurePlan> Exposures { get; init; }

    /// <summary>The exposures that work, in the order in which their cards hang on the ring: by magnification, and within one in the order of the set-ups.</summary>
    public IReadOnlyList<ExposurePlan> Ring => CardRing.Of(Exposures).On;

    /// <summary>The exposures that cannot work, in the same order; a ring that has them all the same has them at its end.</summary>
    public IReadOnlyList<ExposurePlan> OffRing => CardRing.Of(Exposures).Off;

    /// <summary>Number of a card on the ring, counted from 1; none where there is no such card.</summary>
    /// <param name="setUp">Name of its set-up.</param>
    /// <param name="framing">Name of its framing.</param>
    public int? CardNumber(string setUp, string framing) => CardRing.Of(Exposures).Number(setUp, framing);

    /// <summary>Where the lights about the subject stand, in each exposure.</summary>
    public IReadOnlyList<LightStandPlan> LightStands { get; init; } = [];

    /// <summary>What is advised for each exposure; worked out when it is asked for.</summary>
    public AdviceBook Advice { get; init; } = new(new Dictionary<(string SetUp, string Framing), CardAdvice>());

    /// <summary>Whether the features that decide what subjects are can be seen, in each exposure that shows one whole; empty where the kit names none.</summary>
    public IReadOnlyList<FeaturePlan> Features { get; init; } = [];

    /// <summary>The clear covers and tanks of the set-ups that have one: what they leave room for, show, and for how long.</summary>
    public ValueList<CoverPlan> Covers { get; init; } = [];

    /// <summary>From an animal's length to the cards that show it whole and largest, shortest animals first.</summary>
    public IReadOnlyList<AnimalRung> AnimalLadder { get; init; } = [];

    /// <summary>Depth of field against magnification, for the f-numbers in use.</summary>
    public IReadOnlyList<DepthCurve> DepthCurves { get; init; } = [];

    /// <summary>The frame and what is cut for it; none where no set-up uses the panel.</summary>
    public FramePlan? Frame { get; init; }

    /// <summary>What is cut and bought for everything that is built; none where nothing is.</summary>
    public Workshop? Workshop => Frame?.Workshop ?? WorkshopWithoutFrame;

    /// <summary>What is cut and bought for upright sheets alone; none where a frame is built, or no sheet stands.</summary>
    public Workshop? WorkshopWithoutFrame { get; init; }

    /// <summary>What is carried and what it weighs.</summary>
    public required PackPlan Pack { get; init; }

    /// <summary>How the subjects are handled, a card for each group; empty without subjects.</summary>
    public IReadOnlyList<HandlingCard> Handling { get; init; } = [];

    /// <summary>The session in the field; none where no subject can be photographed whole.</summary>
    public SessionPlan? Session { get; init; }

    /// <summary>The day at its place; none where the kit has no date or place.</summary>
    public DayPlan? Day { get; init; }

    /// <summary>Where somebody or something can be hurt, and on which sheets that is said.</summary>
    public IReadOnlyList<PlanCaution> Cautions { get; init; } = [];

    /// <summary>Everything that was checked; the plan stands when all of them pass.</summary>
    public required IReadOnlyList<PlanCheck> Checks { get; init; }

    /// <summary>Whether failing checks say nothing of what would mend them, as nobody reads it of a design among thousands and looking for it takes a third of the time.</summary>
    internal bool IsWithoutRemedies { get; init; }

    /// <summary>Defaults that stood in for what the kit does not say, as "key: value".</summary>
    public required IReadOnlyList<PlanDefault> Defaults { get; init; }

    /// <summary>What the kit says, as written, by the path of the key; empty for a kit that was not read from a text.</summary>
    public ValueDictionary<string> Written { get; init; } = new();

    /// <summary>Corrections measured in the field that the plan is made with; none where the kit stands as written.</summary>
    public MeasuredCorrections? Corrections { get; init; }

    /// <summary>The framings with the optics behind them.</summary>
    public IReadOnlyList<PlannedFraming> PlannedFramings { get; init; } = [];

    /// <summary>The studio's light, which the exposures were worked out in; whoever asks for other distances or powers reads it too. None in a plan written by hand.</summary>
    public StudioLight? Light { get; init; }

    /// <summary>The smallest white margin of all exposures; none where nothing is to be white.</summary>
    public Stops? LeastWhiteMargin => Exposures.Select(exposure => exposure.WhiteMargin).OfType<Stops>().OrderBy(margin => margin.Value).Cast<Stops?>().FirstOrDefault();

    /// <summary>Whether every check passes.</summary>
    public bool Stands => Checks.All(check => check.Passed);
}
