using StudioKit.Planning.Exploring;

namespace StudioKit.Wording;

/// <summary>What is wrong with what a kit leaves open, in words.</summary>
public static class DesignProblemText
{
    /// <summary>What is wrong.</summary>
    /// <param name="problem">The problem.</param>
    public static string Message(DesignProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var option = problem.Option is null ? $"'{problem.Choice}'" : $"'{problem.Option}' of '{problem.Choice}'";
        var why = problem.Why is null ? "" : $" {problem.Why}";
        return problem.Kind switch
        {
            DesignProblemKind.NothingOpen => "Nothing is left open in this kit, so there is nothing to explore.",
            DesignProblemKind.NoSuchPlace => $"{option} changes what the kit has not.{why}",
            DesignProblemKind.CannotBeWritten => $"{option} cannot be written into the kit.{why}",
            DesignProblemKind.CannotBeRead => $"With {option} the kit cannot be read.{why}",
            DesignProblemKind.SameAsOther => $"{option} comes to the same kit as '{problem.Other}'.",
            DesignProblemKind.WrittenTwice => $"'{problem.Choice}' and '{problem.Other}' contradict each other.{why}",
            DesignProblemKind.NothingChanges => $"{option} is empty: all that it leaves open comes to the kit as it is.",
            _ => throw new ArgumentOutOfRangeException(nameof(problem), problem.Kind, "Not a problem with what is open."),
        };
    }

    /// <summary>What would do; none where the message says it.</summary>
    /// <param name="problem">The problem.</param>
    public static string? Hint(DesignProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return problem.Kind switch
        {
            DesignProblemKind.NothingOpen => "Mark what is open: an 'explore' section with 'choices', each with 'name' and 'key' and 'values'.",
            DesignProblemKind.NoSuchPlace => "A path reads like 'set-ups[white].lights[0].distance'; an entry goes by its name, or by its place from 0.",
            DesignProblemKind.CannotBeWritten when problem.Why is not null => null,
            DesignProblemKind.CannotBeWritten => "Write the value out in the kit first, so that it can be changed in its place.",
            DesignProblemKind.CannotBeRead => "Each option must go with the kit as it is written; what only goes together belongs into one option, under 'writes' and 'leave-out'.",
            DesignProblemKind.SameAsOther => "Leave one of them out.",
            DesignProblemKind.WrittenTwice => "Make one choice of both, with 'options'.",
            DesignProblemKind.NothingChanges => "Give it a value that the kit has not.",
            _ => throw new ArgumentOutOfRangeException(nameof(problem), problem.Kind, "Not a problem with what is open."),
        };
    }
}
