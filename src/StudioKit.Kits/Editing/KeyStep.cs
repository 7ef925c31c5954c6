namespace StudioKit.Kits.Editing;

/// <summary>One step of a path: a key, or a place in a list counted from 0 where there is none.</summary>
internal readonly record struct KeyStep(string? Key, int Index);
