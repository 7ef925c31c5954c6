using StudioKit.Web.Results;

namespace StudioKit.Web.Editing;

/// <summary>A test frame on the table.</summary>
/// <param name="key">Its key in the worker.</param>
/// <param name="name">Its file's name.</param>
public sealed class TakenFrame(string key, string name)
{
    /// <summary>Its key in the worker.</summary>
    public string Key { get; } = key;

    /// <summary>Its file's name.</summary>
    public string Name { get; } = name;

    /// <summary>Power that the lower flash was set to, as typed; empty for the plan's.</summary>
    public string Power { get; set; } = "";

    /// <summary>What was read of it; none before.</summary>
    public ReadPicture? Read { get; set; }

    /// <summary>What it comes to; none before.</summary>
    public FrameAnswer? Told { get; set; }

    /// <summary>Why nothing can be told of it.</summary>
    public IReadOnlyList<string> Faults { get; set; } = [];
}
