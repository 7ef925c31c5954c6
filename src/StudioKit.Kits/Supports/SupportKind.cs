namespace StudioKit.Kits.Supports;

/// <summary>What the camera rests on.</summary>
public enum SupportKind
{
    /// <summary>A tripod.</summary>
    Tripod,

    /// <summary>A focusing rail, on a tripod or on the ground.</summary>
    Rail,

    /// <summary>A bag of beans or grain on the ground.</summary>
    BeanBag,

    /// <summary>A hand that is braced, as on a knee or the ground; nothing is carried.</summary>
    Hand,
}
