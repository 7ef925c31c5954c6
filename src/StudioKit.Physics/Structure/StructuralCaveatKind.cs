namespace StudioKit.Physics.Structure;

/// <summary>Where the theory of a structural check is strained, or one of its values is a guess.</summary>
public enum StructuralCaveatKind
{
    /// <summary>The sheet is thicker than a quarter of its span, where thin-plate theory understates the sag.</summary>
    ThickSheet,

    /// <summary>The sheet sags more than half its thickness, where tension in it holds it flatter.</summary>
    DeepSag,

    /// <summary>All four edges of the sheet rest on strips; held flat they would let it sag by the size given, and a real ledge lies between.</summary>
    SagWithEdgesHeld,

    /// <summary>The sheet rests on its front and back edges alone and spans the depth as a strip.</summary>
    RestsOnTwoEdges,

    /// <summary>As thin as its standard lets it be, the sheet sags by the size given.</summary>
    SagAtLeastThickness,

    /// <summary>The limit of sag is common practice, a hundredth of the short side.</summary>
    HundredthOfShortSide,

    /// <summary>Under the elbow the sheet sags by the size given.</summary>
    SagUnderElbow,

    /// <summary>A sheet bent cold bears the stress given for as long as it is up.</summary>
    StressWhileBent,

    /// <summary>Warmth and moisture together can grow the sheet by the size given at each edge over a wet season.</summary>
    WetSeason,

    /// <summary>Half the panel is taken to rest on one rail, its ends free to turn.</summary>
    HalfPanelOnRail,

    /// <summary>The limit of sag is common practice, a two-hundredth of the span.</summary>
    TwoHundredthOfSpan,

    /// <summary>The strength at the day's warmth is divided by the safety factor given; the elbow presses the rail down by the size given.</summary>
    RailUnderElbow,

    /// <summary>The elbow leans over one leg and the standing load is raised for creep, with the safety factor given.</summary>
    ElbowOverLeg,

    /// <summary>The elbow leans over one leg, a cord pulls it down and the standing load is raised for creep, with the safety factor given.</summary>
    ElbowAndCordOverLeg,

    /// <summary>Cords keep the top in its place, so that a leg is taken as hinged at both ends.</summary>
    HingedByCords,

    /// <summary>The stiffness of dry push fits differs widely.</summary>
    JointStiffness,

    /// <summary>The limit of lean is common practice, a fiftieth of the height.</summary>
    FiftiethOfHeight,

    /// <summary>Half the cords are taken to hold, the push at the top, with the safety factor given.</summary>
    WindwardCords,

    /// <summary>People and animals trip over cords.</summary>
    CordsTrip,

    /// <summary>At the warmth given the pipe keeps the shares given of its stiffness and strength.</summary>
    SoftenedPipe,

    /// <summary>The pipe is brittle near freezing.</summary>
    BrittlePipe,

    /// <summary>The gust is taken at full strength at panel height, with the safety factor given and no lift under the panel.</summary>
    GustAtPanelHeight,

    /// <summary>Friction between feet and ground is a guess.</summary>
    Friction,

    /// <summary>A peg's hold is the kit's own figure, and half the pegs are taken to stand to windward.</summary>
    PegHold,

    /// <summary>The gust may press beside the middle, so that one pole bears three quarters and more of it, with the safety factor given.</summary>
    GustOnOnePole,

    /// <summary>A stake's hold is what was measured where it stands, at its depth.</summary>
    StakeHold,

    /// <summary>How far stakes work loose in the gust is not counted.</summary>
    GroundNotCounted,

    /// <summary>The limit is common practice, half the way from the sheet to its subject.</summary>
    HalfWayToSubject,

    /// <summary>The stress is that of a sheet as thin as its standard lets it be.</summary>
    LeastThickness,
}
