namespace StudioKit.Physics.Light;

/// <summary>A quantity of a studio that has a range.</summary>
public enum LightQuantity
{
    /// <summary>Width of the panel.</summary>
    PanelWidth,

    /// <summary>Depth of the panel.</summary>
    PanelDepth,

    /// <summary>Height of the panel over the ground.</summary>
    PanelHeight,

    /// <summary>Width of a flash's window.</summary>
    WindowWidth,

    /// <summary>Height of a flash's window.</summary>
    WindowHeight,

    /// <summary>A flash's place or intensity.</summary>
    FlashLight,

    /// <summary>Width of a view's field.</summary>
    FieldWidth,

    /// <summary>Height of a view's field.</summary>
    FieldHeight,

    /// <summary>Distance of a view's pupil.</summary>
    PupilDistance,

    /// <summary>Transmittance of the panel.</summary>
    Transmittance,

    /// <summary>Reflectance of the panel's underside.</summary>
    UndersideReflectance,

    /// <summary>Scatter exponent of the panel.</summary>
    ScatterExponent,

    /// <summary>Reflectance of the ground.</summary>
    FloorReflectance,

    /// <summary>Reflectance of the skirts.</summary>
    SkirtReflectance,

    /// <summary>Reach of the lit ground beyond the panel.</summary>
    OpenFloorMargin,

    /// <summary>Height of an upright sheet's lower edge over the ground.</summary>
    GroundUnderSheet,

    /// <summary>Lean of an upright sheet.</summary>
    Lean,
}
