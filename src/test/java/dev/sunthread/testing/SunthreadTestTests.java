package dev.sunthread.testing;

class SunthreadTestTests extends SunthreadTestContract {}
