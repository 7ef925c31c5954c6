namespace StudioKit.Kits.Forms;

/// <summary>What one field of a form takes.</summary>
public enum FieldKind
{
    /// <summary>A few words, or a sentence.</summary>
    Text,

    /// <summary>One of the words that the field lists.</summary>
    Choice,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A count.</summary>
    WholeNumber,

    /// <summary>A ratio, factor, price or other number without a unit.</summary>
    Number,

    /// <summary>A number with a unit.</summary>
    Quantity,

    /// <summary>Two or three sides, or two counts of pixels, written together.</summary>
    Size,

    /// <summary>From one value to another.</summary>
    Range,

    /// <summary>What stands on a camera, lens, flash or meter: stops, f-number, shutter speed, ISO speed, power, guide number, exposure value, magnification.</summary>
    Setting,

    /// <summary>Name of a part of the parts library.</summary>
    Part,

    /// <summary>Name of something that the kit describes elsewhere.</summary>
    Name,

    /// <summary>A section with fields of its own.</summary>
    Group,
}
