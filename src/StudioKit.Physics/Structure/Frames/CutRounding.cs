namespace StudioKit.Physics.Structure.Frames;

/// <summary>What cut lengths are rounded to.</summary>
public enum CutRounding
{
    /// <summary>Half a millimetre.</summary>
    HalfMillimetre,

    /// <summary>A sixteenth of an inch.</summary>
    SixteenthInch,
}
