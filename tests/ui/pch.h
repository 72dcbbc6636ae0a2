#pragma once
// Precompiled for the tests of the window.
#include <gtest/gtest.h>

#include <QtTest>
#include <QtWidgets>

#include "core/plan/plan.h"
