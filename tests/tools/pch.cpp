// Nothing but the place where the precompiled header of the tests is made.
