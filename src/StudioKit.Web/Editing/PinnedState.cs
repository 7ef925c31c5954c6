namespace StudioKit.Web.Editing;

/// <summary>A state of a kit that was pinned.</summary>
/// <param name="Name">What to call it.</param>
/// <param name="Text">The kit's text.</param>
/// <param name="Number">Its number, from 1.</param>
public sealed record PinnedState(string Name, string Text, int Number);
