using StudioKit.Physics;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>What may stand between the subject and the sheet behind it without being seen, and the room that is looked through there.</summary>
/// <remarks>Taken of the darkest visible place of the sheet. A stem as far before the subject vanishes as well, but lies over the subject too.</remarks>
public sealed record StrayStemPlan
{
    /// <summary>Subject to sheet, along the line of sight where that is shortest.</summary>
    public required Length ToSheet { get; init; }

    /// <summary>Widest stem that vanishes right before the sheet; zero where the sheet does not clip.</summary>
    public required Length WidestAtSheet { get; init; }

    /// <summary>Widest stem that vanishes half way to the sheet.</summary>
    public required Length WidestHalfWay { get; init; }

    /// <summary>From where on some stems vanish, thin ones first.</summary>
    public required ValueList<VanishingStem> Stems { get; init; }

    /// <summary>Width of what is looked at of the sheet, over all camera angles, with what blurred rays reach beside it; none where a camera looks past any sheet.</summary>
    public Length? ClearWidth { get; init; }

    /// <summary>Height of the same, along the sheet.</summary>
    public Length? ClearHeight { get; init; }
}
